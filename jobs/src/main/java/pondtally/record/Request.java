package pondtally.record;

/**
 * A request for a device, and what became of it.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param siteId the site asked for
 * @param askedOn days since 1970-01-01
 * @param outcome null: not recorded
 */
public record Request(
    Origin origin, String partner, String siteId, int askedOn, RequestOutcome outcome)
    implements Sourced {}
