package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pondtally.analysis.CostLine.Payment;
import pondtally.analysis.CostLine.Stage;
import pondtally.history.DeviceHistory;
import pondtally.stats.ExactSum;

/**
 * What was spent, in dollars of the base year, by group and fiscal year up to the end of the
 * period.
 */
public final class CostTally implements Serializable {

  private static final long serialVersionUID = 1;

  private final AnalysisSettings settings;
  private final Map<GroupKey, ByYear<Sums>> sums = new HashMap<>();

  public CostTally(AnalysisSettings settings) {
    this.settings = settings;
  }

  /** Sums of one group in one year. */
  public static final class Sums implements Serializable {
    private static final long serialVersionUID = 1;
    private long sites;
    private long devices;
    private long costed;
    private final ExactSum build = new ExactSum();
    private final ExactSum upkeep = new ExactSum();
    private final ExactSum inKind = new ExactSum();
    private final ExactSum volunteerHours = new ExactSum();
    private long linesBeforeIndex;
    private final ExactSum beforeIndex = new ExactSum();
    private long linesProvisional;
    private final ExactSum provisional = new ExactSum();

    private void merge(Sums other) {
      sites += other.sites;
      devices += other.devices;
      costed += other.costed;
      build.merge(other.build);
      upkeep.merge(other.upkeep);
      inKind.merge(other.inKind);
      volunteerHours.merge(other.volunteerHours);
      linesBeforeIndex += other.linesBeforeIndex;
      beforeIndex.merge(other.beforeIndex);
      linesProvisional += other.linesProvisional;
      provisional.merge(other.provisional);
    }
  }

  /** Adds the costs of a cluster. */
  public void add(ClusterView cluster) {
    for (ClusterView.Subset subset : cluster.subsets()) {
      ByYear<Sums> own = sums(cluster, subset.devices());
      for (GroupKey key : subset.keys()) {
        merge(key, own);
      }
    }
  }

  private ByYear<Sums> sums(ClusterView cluster, List<DeviceHistory> devices) {
    ByYear<Sums> own = new ByYear<>();
    FiscalYears years = settings.fiscalYears();
    int start = 2 * firstDay(cluster, devices);
    for (Years.Span span : Years.spans(years, start, settings.endHalfDay())) {
      addSpan(own.of(span.year(), Sums::new), cluster, devices, span);
    }
    Sums whole = own.get(Years.WHOLE);
    for (DeviceHistory device : devices) {
      DeviceCost cost = cluster.costOf(device);
      for (CostLine line : cost.lines()) {
        if (2L * line.day() < settings.endHalfDay()) {
          addLine(whole, line);
          addLine(own.get(years.of(line.day())), line);
        }
      }
      for (DeviceCost.DatedHours hours : cost.volunteerHours()) {
        if (2L * hours.day() < settings.endHalfDay()) {
          whole.volunteerHours.add(hours.hours());
          Sums year = own.get(years.of(hours.day()));
          if (year != null) {
            year.volunteerHours.add(hours.hours());
          }
        }
      }
    }
    return own;
  }

  /** First day of an install or of a cost: material may be bought the year before. */
  private static int firstDay(ClusterView cluster, List<DeviceHistory> devices) {
    int first = Integer.MAX_VALUE;
    for (DeviceHistory device : devices) {
      first = Math.min(first, device.install().installedOn());
      for (CostLine line : cluster.costOf(device).lines()) {
        first = Math.min(first, line.day());
      }
    }
    return first;
  }

  private static void addSpan(
      Sums sums, ClusterView cluster, List<DeviceHistory> devices, Years.Span span) {
    Set<String> sites = new HashSet<>();
    for (DeviceHistory device : devices) {
      if (inService(device, span)) {
        sites.add(device.siteId());
        sums.devices++;
        sums.costed += cluster.costOf(device).built() ? 1 : 0;
      }
    }
    sums.sites += sites.size();
  }

  private static boolean inService(DeviceHistory device, Years.Span span) {
    return 2 * device.install().installedOn() < span.to()
        && (device.endedOn() == null || device.endedOn() >= span.from());
  }

  private static void addLine(Sums sums, CostLine line) {
    if (line.realUsd() == null) {
      sums.linesBeforeIndex++;
      sums.beforeIndex.add(line.nominalUsd());
      return;
    }
    if (line.indexProvisional()) {
      sums.linesProvisional++;
      sums.provisional.add(line.realUsd());
    }
    if (line.payment() != Payment.CASH) {
      sums.inKind.add(line.realUsd());
    } else if (line.stage() == Stage.BUILD) {
      sums.build.add(line.realUsd());
    } else {
      sums.upkeep.add(line.realUsd());
    }
  }

  private void merge(GroupKey key, ByYear<Sums> more) {
    ByYear<Sums> own = sums.computeIfAbsent(key, k -> new ByYear<>());
    more.forEach((year, sums) -> own.of(year, Sums::new).merge(sums));
  }

  /** Adds what another tally summed. */
  public void merge(CostTally other) {
    other.sums.forEach(this::merge);
  }

  /** One row of the result table {@code costs}. */
  public record Row(
      String grouping,
      String group,
      String year,
      Long sites,
      Long devices,
      Long devicesCosted,
      Double buildUsd,
      Double upkeepUsd,
      Double inKindUsd,
      Double estimatedUsd,
      Double totalUsd,
      Double volunteerHours,
      Integer baseYear,
      Long devicesEstimated,
      Long linesBeforeIndex,
      Double beforeIndexNominalUsd,
      Long linesIndexProvisional,
      Double indexProvisionalUsd,
      String indexNote) {

    /** Marks sums that rest on an index that is not final. */
    static final String PROVISIONAL = "index-provisional";

    /** Marks all other sums. */
    static final String FINAL = "final";
  }

  /**
   * The rows of the result table; sums are empty where no device of the group has a recorded cost.
   */
  public List<Row> rows(EstimatedCosts estimated) {
    List<Row> rows = new ArrayList<>();
    new TreeMap<>(sums)
        .forEach(
            (key, byYear) ->
                byYear.forEach((year, s) -> rows.add(row(key, Years.label(year), s, estimated))));
    return rows;
  }

  private Row row(GroupKey key, String year, Sums s, EstimatedCosts estimated) {
    ExactSum total = new ExactSum();
    total.merge(s.build);
    total.merge(s.upkeep);
    total.merge(s.inKind);
    boolean known = s.costed > 0 || total.result() != 0;
    return new Row(
        key.grouping().code(),
        key.group(),
        year,
        s.sites,
        s.devices,
        s.costed,
        known ? s.build.result() : null,
        known ? s.upkeep.result() : null,
        known ? s.inKind.result() : null,
        estimated.usd(key, year),
        known ? total.result() : null,
        s.volunteerHours.result(),
        settings.baseYear(),
        estimated.devices(key, year),
        s.linesBeforeIndex,
        s.beforeIndex.result(),
        s.linesProvisional,
        s.provisional.result(),
        s.linesProvisional > 0 ? Row.PROVISIONAL : Row.FINAL);
  }
}
