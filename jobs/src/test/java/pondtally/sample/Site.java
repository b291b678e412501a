package pondtally.sample;

/**
 * A site of the invented region.
 *
 * @param acres true area of its pond at the managed level before the first device
 * @param removalsBefore animals removed a year before the first device
 * @param damagePerYearUsd what the conflict cost a year before it, in base-year dollars
 */
record Site(
    String id,
    Partner partner,
    SampleTruth.Watershed watershed,
    String setting,
    String pondId,
    double acres,
    double removalsBefore,
    double damagePerYearUsd,
    boolean hasDevice) {}
