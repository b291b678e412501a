package pondtally.history;

import java.io.Serializable;
import java.util.List;

/**
 * A pond, counted once however many sites and devices it has. Times are half days since 1970-01-01.
 *
 * @param siteIds its sites, sorted; the first stands for the pond in groupings by watershed or
 *     setting
 * @param area its wetland area through time; null where it was never measured
 * @param acresBefore area at the managed level before the first device; null where not measured
 * @param acresLostToLowering flooded extent before, less the first measurement after entry; null
 *     without both
 * @param firstEntryOn earliest entry of its devices; null without devices
 * @param functional while at least one of its devices was functional, verified
 */
public record PondHistory(
    String pondId,
    List<String> siteIds,
    AreaLine area,
    Double acresBefore,
    Double acresLostToLowering,
    Integer firstEntryOn,
    Stretches functional)
    implements Serializable {}
