package pondtally.record;

/**
 * One dated measurement of a pond's wetland area at the managed level.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param siteId null where the pond is named
 * @param pondId null where the site is named
 * @param measuredOn days since 1970-01-01
 * @param acres wetland area, acres
 * @param method how it was measured
 */
public record Area(
    Origin origin,
    String partner,
    String siteId,
    String pondId,
    int measuredOn,
    double acres,
    AreaMethod method)
    implements Sourced {}
