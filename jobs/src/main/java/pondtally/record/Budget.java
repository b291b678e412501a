package pondtally.record;

/**
 * What a funder awarded for a period, and the match it requires.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param funder the funder
 * @param periodStart first day, days since 1970-01-01
 * @param periodEnd last day, days since 1970-01-01
 * @param awardUsd nominal dollars; null: not recorded
 * @param matchRequiredUsd nominal dollars; null: none recorded
 */
public record Budget(
    Origin origin,
    String partner,
    String funder,
    int periodStart,
    int periodEnd,
    Double awardUsd,
    Double matchRequiredUsd)
    implements Sourced {}
