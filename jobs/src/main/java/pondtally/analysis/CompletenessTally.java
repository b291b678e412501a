package pondtally.analysis;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pondtally.history.DeviceHistory;
import pondtally.history.SiteHistory;
import pondtally.record.Install;
import pondtally.record.Visit;

/**
 * Who has sent what: for each partner and calendar year the newest date sent, and devices due, seen
 * and missing.
 */
public final class CompletenessTally implements Serializable {

  private static final long serialVersionUID = 1;

  private final int asOf;
  private final Map<String, ByYear<Counts>> counts = new HashMap<>();

  public CompletenessTally(AnalysisSettings settings) {
    this.asOf = settings.rules().asOf();
  }

  private static final class Counts implements Serializable {
    private static final long serialVersionUID = 1;
    private Integer newest;
    private long expected;
    private long seen;

    private void sent(int day) {
      newest = newest == null ? day : Math.max(newest, day);
    }

    private void merge(Counts other) {
      if (other.newest != null) {
        sent(other.newest);
      }
      expected += other.expected;
      seen += other.seen;
    }
  }

  /** Counts the devices and dated rows of a cluster. */
  public void add(ClusterView cluster) {
    for (Install install : cluster.history().records().installs()) {
      counts(install.partner(), year(install.installedOn())).sent(install.installedOn());
    }
    Map<String, Set<Integer>> yearsSeen = new HashMap<>();
    for (Visit visit : cluster.history().records().visits()) {
      int year = year(visit.visitedOn());
      counts(visit.partner(), year).sent(visit.visitedOn());
      yearsSeen.computeIfAbsent(visit.deviceId(), device -> new HashSet<>()).add(year);
    }
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        addDevice(device, yearsSeen.getOrDefault(device.deviceId(), Set.of()));
      }
    }
  }

  private void addDevice(DeviceHistory device, Set<Integer> yearsSeen) {
    int last = device.endedOn() == null ? year(asOf) : year(Math.floorDiv(device.endedOn(), 2));
    for (int y = year(Math.floorDiv(device.entryOn(), 2)); y <= last; y++) {
      Counts c = counts(device.install().partner(), y);
      c.expected++;
      c.seen += yearsSeen.contains(y) ? 1 : 0;
    }
  }

  private static int year(int day) {
    return LocalDate.ofEpochDay(day).getYear();
  }

  private Counts counts(String partner, int year) {
    return counts.computeIfAbsent(partner, p -> new ByYear<>()).of(year, Counts::new);
  }

  /** Adds what another tally counted. */
  public void merge(CompletenessTally other) {
    other.counts.forEach(
        (partner, byYear) -> byYear.forEach((year, more) -> counts(partner, year).merge(more)));
  }

  /** One row of the result table {@code completeness}. */
  public record Row(
      String partner,
      Integer year,
      Integer lastDateSent,
      Long devicesExpected,
      Long devicesSeen,
      Long devicesMissing) {}

  /** The rows of the result table. */
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    new TreeMap<>(counts)
        .forEach((partner, byYear) -> byYear.forEach((year, c) -> rows.add(row(partner, year, c))));
    return rows;
  }

  private static Row row(String partner, int year, Counts c) {
    return new Row(partner, year, c.newest, c.expected, c.seen, c.expected - c.seen);
  }
}
