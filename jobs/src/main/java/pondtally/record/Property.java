package pondtally.record;

/**
 * Something of value that a site's devices protect.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param propertyId the partner's own id of the property
 * @param siteId the site whose water threatens it
 * @param propertyType null: not recorded
 * @param protectedFrom days since 1970-01-01; null: the site's first entry
 * @param protectedUntil last day, days since 1970-01-01; null: still
 * @param damagePerYearUsd expected yearly damage without a device, in dollars of damageYear; null:
 *     not recorded
 * @param damageYear price year of that damage; null: not recorded
 * @param owner private; null: not recorded
 */
public record Property(
    Origin origin,
    String partner,
    String propertyId,
    String siteId,
    PropertyType propertyType,
    Integer protectedFrom,
    Integer protectedUntil,
    Double damagePerYearUsd,
    Integer damageYear,
    String owner)
    implements Sourced {}
