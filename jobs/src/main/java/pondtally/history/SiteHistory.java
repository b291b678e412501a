package pondtally.history;

import java.io.Serializable;
import java.util.List;
import pondtally.record.Site;

/**
 * A site and its devices. Times are half days since 1970-01-01.
 *
 * @param pondId the pond it drains; the site's own id where none was recorded
 * @param devices in order of installation
 * @param firstEntryOn earliest entry of its devices; null without devices
 * @param functional while at least one of its devices was functional, verified
 * @param verified while at least one of its devices was under verified observation
 */
public record SiteHistory(
    Site site,
    String pondId,
    List<DeviceHistory> devices,
    Integer firstEntryOn,
    Stretches functional,
    Stretches verified)
    implements Serializable {}
