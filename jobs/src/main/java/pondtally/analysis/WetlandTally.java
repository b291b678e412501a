package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pondtally.history.DeviceHistory;
import pondtally.history.PondHistory;
import pondtally.history.Stretches;
import pondtally.stats.ExactSum;

/**
 * Wetland kept, by group and fiscal year. A pond counts once however many devices and sites it has;
 * a stock is taken at the end of a year and never added up over years.
 */
public final class WetlandTally implements Serializable {

  private static final long serialVersionUID = 1;

  /** Hectares in an acre (international acre, 4,046.8564224 square meters). */
  public static final double HECTARES_PER_ACRE = 0.40468564224;

  private static final double DAYS_PER_YEAR = 365.25;

  private final AnalysisSettings settings;
  private final Map<GroupKey, ByYear<Sums>> sums = new HashMap<>();

  public WetlandTally(AnalysisSettings settings) {
    this.settings = settings;
  }

  /** Sums of one group in one year. */
  static final class Sums implements Serializable {
    private static final long serialVersionUID = 1;
    private long sites;
    private long sitesMeasured;
    private long ponds;
    private long pondsWithBefore;
    private long pondsWithLowering;
    private final ExactSum before = new ExactSum();
    private final ExactSum verified = new ExactSum();
    private final ExactSum unverified = new ExactSum();
    private final ExactSum acreYears = new ExactSum();
    private final ExactSum extrapolated = new ExactSum();
    private final ExactSum lowered = new ExactSum();

    double verified() {
      return verified.result();
    }

    double unverified() {
      return unverified.result();
    }

    double acreYears() {
      return acreYears.result();
    }

    double extrapolated() {
      return extrapolated.result();
    }

    private void merge(Sums other) {
      sites += other.sites;
      sitesMeasured += other.sitesMeasured;
      ponds += other.ponds;
      pondsWithBefore += other.pondsWithBefore;
      pondsWithLowering += other.pondsWithLowering;
      before.merge(other.before);
      verified.merge(other.verified);
      unverified.merge(other.unverified);
      acreYears.merge(other.acreYears);
      extrapolated.merge(other.extrapolated);
      lowered.merge(other.lowered);
    }
  }

  /** Adds the ponds of a cluster. */
  public void add(ClusterView cluster) {
    for (PondHistory pond : cluster.history().ponds()) {
      for (ClusterView.Subset subset : ClusterView.subsets(PondGroups.of(cluster, pond))) {
        ByYear<Sums> own = sums(pond, subset.devices());
        for (GroupKey key : subset.keys()) {
          merge(key, own);
        }
      }
    }
  }

  /** What one pond adds in each year from the first entry of {@code devices} there. */
  ByYear<Sums> sums(PondHistory pond, List<DeviceHistory> devices) {
    ByYear<Sums> own = new ByYear<>();
    int start = ClusterView.firstEntry(devices);
    Stretches functional = ClusterView.functional(devices);
    for (Years.Span span : Years.spans(settings.fiscalYears(), start, settings.endHalfDay())) {
      if (start < span.to()) {
        addSpan(own.of(span.year(), Sums::new), pond, devices, functional, span);
      }
    }
    return own;
  }

  private void addSpan(
      Sums s,
      PondHistory pond,
      List<DeviceHistory> devices,
      Stretches functionalEver,
      Years.Span span) {
    Set<String> sites = new HashSet<>();
    devices.forEach(device -> sites.add(device.siteId()));
    s.sites += sites.size();
    if (pond.area() == null) {
      return;
    }
    s.sitesMeasured += sites.size();
    s.ponds++;
    if (pond.acresBefore() != null) {
      s.pondsWithBefore++;
      s.before.add(pond.acresBefore());
    }
    if (pond.acresLostToLowering() != null) {
      s.pondsWithLowering++;
      s.lowered.add(pond.acresLostToLowering());
    }
    int at = span.to() - 1;
    Standing standing = Standing.of(devices, at, settings.rules().revisitEveryDays());
    if (standing == Standing.VERIFIED) {
      s.verified.add(pond.area().acresAt(at));
    } else if (standing == Standing.UNVERIFIED) {
      s.unverified.add(pond.area().acresAt(at));
    }
    Stretches functional = functionalEver.within(span.from(), span.to());
    s.acreYears.add(pond.area().acreDays(functional) / DAYS_PER_YEAR);
    s.extrapolated.add(pond.area().acreDaysExtrapolated(functional) / DAYS_PER_YEAR);
  }

  private void merge(GroupKey key, ByYear<Sums> more) {
    ByYear<Sums> own = sums.computeIfAbsent(key, k -> new ByYear<>());
    more.forEach((year, sums) -> own.of(year, Sums::new).merge(sums));
  }

  /** Adds what another tally summed. */
  public void merge(WetlandTally other) {
    other.sums.forEach(this::merge);
  }

  /** One row of the result table {@code wetland}. */
  public record Row(
      String grouping,
      String group,
      String year,
      Long sites,
      Long sitesMeasured,
      Long ponds,
      Double acresBefore,
      Double acresRetainedVerified,
      Double acresRetainedUnverified,
      Double acreYears,
      Double acreYearsExtrapolated,
      Double hectaresRetainedVerified,
      Double acresLostToLowering) {}

  /** The rows of the result table; areas are empty where no pond of the group was measured. */
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    new TreeMap<>(sums)
        .forEach((key, byYear) -> byYear.forEach((year, s) -> rows.add(row(key, year, s))));
    return rows;
  }

  private static Row row(GroupKey key, int year, Sums s) {
    boolean known = s.ponds > 0;
    return new Row(
        key.grouping().code(),
        key.group(),
        Years.label(year),
        s.sites,
        s.sitesMeasured,
        s.ponds,
        s.pondsWithBefore > 0 ? s.before.result() : null,
        known ? s.verified.result() : null,
        known ? s.unverified.result() : null,
        known ? s.acreYears.result() : null,
        known ? s.extrapolated.result() : null,
        known ? s.verified.result() * HECTARES_PER_ACRE : null,
        s.pondsWithLowering > 0 ? s.lowered.result() : null);
  }
}
