package pondtally.record;

/**
 * A place where devices stand.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param siteId the partner's own id of the site
 * @param watershed hydrologic unit code (2 to 12 digits, even) or another code, as text; null: not
 *     recorded
 * @param setting what the site lies beside; null: not recorded
 * @param latitude degrees north, WGS 84; null: not recorded
 * @param longitude degrees east, WGS 84; null: not recorded
 * @param landowner private; null: not recorded
 * @param pondId the pond that the site drains; null: a pond of its own, named by the site
 * @param removalsPerYearBefore animals removed a year before the first device; null: not recorded
 * @param damageCostPerYearBeforeUsd what the conflict cost a year before the first device, in
 *     dollars of damageCostYear; null: not recorded
 * @param damageCostYear price year of that cost; null: not recorded
 * @param wetlandAcresBefore wetland at the managed level before the first device; null: not
 *     measured
 * @param areaMethod how that area was measured; null: not recorded
 * @param floodedAcresBefore unmanaged extent before the first device; null: not measured
 * @param county null: not recorded
 * @param town null: not recorded
 * @param roadId the road department's own number; null: not recorded
 * @param agreedLevelUntil last day of the water-level agreement, days since 1970-01-01; null: not
 *     recorded
 * @param permitUntil last day of the permit, days since 1970-01-01; null: not recorded
 */
public record Site(
    Origin origin,
    String partner,
    String siteId,
    String watershed,
    Setting setting,
    Double latitude,
    Double longitude,
    String landowner,
    String pondId,
    Double removalsPerYearBefore,
    Double damageCostPerYearBeforeUsd,
    Integer damageCostYear,
    Double wetlandAcresBefore,
    AreaMethod areaMethod,
    Double floodedAcresBefore,
    String county,
    String town,
    String roadId,
    Integer agreedLevelUntil,
    Integer permitUntil)
    implements Sourced {}
