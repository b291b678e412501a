package pondtally.record;

/**
 * Animals removed at a site in a calendar year, and removals claimed to have been avoided.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param siteId the site
 * @param year calendar year
 * @param removals animals actually removed; null: not reported
 * @param avoided removals claimed as avoided; null: not claimed
 * @param evidence what the count rests on; null: not recorded
 */
public record Removal(
    Origin origin,
    String partner,
    String siteId,
    int year,
    Double removals,
    Double avoided,
    Evidence evidence)
    implements Sourced {}
