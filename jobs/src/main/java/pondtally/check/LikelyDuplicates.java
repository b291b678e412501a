package pondtally.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pondtally.record.Origin;

/**
 * Devices that may stand in the records under two ids: put in within two weeks of each other, of
 * the same kind and pipe as far as both are recorded, and either under ids that are written alike,
 * or at the same place from two partners or two sheets. Two rows of one sheet with unlike ids are
 * two devices: whoever wrote the one knew of the other. Pairs are only ever shown; {@code
 * aliases.csv} merges what the coordinator decides.
 */
public final class LikelyDuplicates {

  /** Two accounts of one installation rarely differ by more. */
  static final int DAYS_APART = 14;

  /** Hand-held receivers and points set on a map by hand differ by some tens of meters. */
  static final double METERS_APART = 100;

  /** Beyond this, ids that are written alike are two partners' own numbers. */
  private static final double METERS_ALIKE = 1000;

  /** Nominal sizes are farther apart than this. */
  private static final double DIAMETER_TOLERANCE = 0.04;

  private LikelyDuplicates() {}

  /**
   * One notice a pair, at the row that comes later in file order. Time grows with the number of
   * devices, since {@link RecentInstalls} holds few at one place.
   *
   * @param devices of the whole program, in any order
   */
  public static List<Finding> among(List<InstallPlace> devices) {
    List<InstallPlace> byDay = new ArrayList<>(devices);
    byDay.sort(
        Comparator.comparingInt(InstallPlace::installedOn).thenComparing(InstallPlace::origin));
    RecentInstalls recent = new RecentInstalls();
    List<Finding> pairs = new ArrayList<>();
    for (InstallPlace device : byDay) {
      RecentInstalls.Entry entry = RecentInstalls.Entry.of(device);
      for (RecentInstalls.Entry other : recent.near(entry)) {
        if (mayBeOne(entry, other)) {
          pairs.add(pair(entry, other));
        }
      }
      recent.add(entry);
    }
    return pairs;
  }

  private static boolean mayBeOne(RecentInstalls.Entry a, RecentInstalls.Entry b) {
    InstallPlace one = a.device();
    InstallPlace two = b.device();
    if (one.deviceId().equals(two.deviceId()) || differ(one, two)) {
      return false;
    }
    boolean alike = a.plainId().equals(b.plainId()) && !a.plainId().isEmpty();
    if (alike && !(a.metersTo(b) > METERS_ALIKE)) {
      return true;
    }
    boolean isSamePlace = a.metersTo(b) <= METERS_APART || a.plainSite().equals(b.plainSite());
    return isSamePlace && !isOneSheet(one, two);
  }

  private static boolean differ(InstallPlace one, InstallPlace two) {
    if (one.kind() != null && two.kind() != null && one.kind() != two.kind()) {
      return true;
    }
    Double a = one.pipeDiameterIn();
    Double b = two.pipeDiameterIn();
    return a != null && b != null && Math.abs(a - b) > DIAMETER_TOLERANCE * Math.max(a, b);
  }

  private static boolean isOneSheet(InstallPlace one, InstallPlace two) {
    Origin a = one.origin();
    Origin b = two.origin();
    return a.file() == b.file() && a.sheet() == b.sheet() && one.partner().equals(two.partner());
  }

  private static Finding pair(RecentInstalls.Entry a, RecentInstalls.Entry b) {
    boolean inOrder = a.device().origin().compareTo(b.device().origin()) < 0;
    InstallPlace first = inOrder ? a.device() : b.device();
    InstallPlace second = inOrder ? b.device() : a.device();
    return new Finding(
        second.origin(),
        "installs",
        "device_id",
        null,
        second.deviceId(),
        Severity.NOTICE,
        CheckRule.LIKELY_DUPLICATE.code(),
        message(first, second, a.metersTo(b)),
        aliasLines(first, second));
  }

  private static String message(InstallPlace first, InstallPlace second, double meters) {
    return """
        Device %s may be the same as device %s (%s): %s, %s, %s. Both count as \
        devices until you decide. If they are one, write what is suggested into \
        aliases.csv in the program folder (its columns: kind,id,same_as); if they \
        are two, nothing need be done."""
        .formatted(
            Words.quote(second.deviceId()),
            Words.quote(first.deviceId()),
            Words.row(first.origin()),
            kinds(first, second),
            days(first, second),
            places(first, second, meters));
  }

  private static String kinds(InstallPlace first, InstallPlace second) {
    return first.kind() != null && second.kind() != null
        ? "both " + first.kind().code()
        : "kind not recorded for both";
  }

  private static String days(InstallPlace first, InstallPlace second) {
    int days = Math.abs(first.installedOn() - second.installedOn());
    return days == 0
        ? "both installed on " + Words.date(second.installedOn())
        : "installed on %s and %s"
            .formatted(Words.date(second.installedOn()), Words.date(first.installedOn()));
  }

  private static String places(InstallPlace first, InstallPlace second, double meters) {
    if (first.siteId().equals(second.siteId())) {
      return "both at site " + Words.quote(first.siteId());
    }
    String sites =
        "at sites %s and %s".formatted(Words.quote(second.siteId()), Words.quote(first.siteId()));
    return Double.isNaN(meters) ? sites : sites + ", " + distance(meters);
  }

  private static String distance(double meters) {
    return Words.count(Math.round(meters), "meter") + " apart";
  }

  private static String aliasLines(InstallPlace first, InstallPlace second) {
    String device = alias("device", second.deviceId(), first.deviceId());
    return first.siteId().equals(second.siteId())
        ? device
        : alias("site", second.siteId(), first.siteId()) + " and " + device;
  }

  private static String alias(String kind, String id, String sameAs) {
    return kind + "," + cell(id) + "," + cell(sameAs);
  }

  /** As RFC 4180 writes it. */
  private static String cell(String id) {
    boolean isPlain = id.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return isPlain ? id : "\"" + id.replace("\"", "\"\"") + "\"";
  }
}
