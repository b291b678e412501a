package pondtally.history;

import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.record.Area;
import pondtally.record.AreaMethod;
import pondtally.record.Origin;
import pondtally.record.Visit;

/**
 * Which measurement of a pond counts on a day: survey, then walked, imagery, estimate; of equals
 * the first in file order. An area written down at a revisit counts as walked, since the crew stood
 * at the pond. A {@code wetland_acres_before} is dated the day before the first entry of the site
 * that states it. Common practice, no source.
 */
final class AreaRule {

  /** A measurement of the pond that may count on its day. */
  private record Measurement(int at, AreaMethod method, Origin origin, double acres) {}

  private static final Comparator<Measurement> BEST_FIRST =
      Comparator.<Measurement>comparingInt(m -> rank(m.method()))
          .thenComparing(Measurement::origin)
          .thenComparing(Measurement::acres);

  private final SortedMap<Integer, Measurement> best = new TreeMap<>();

  AreaRule() {}

  /** The area before the first device. */
  void addBefore(SiteHistory site, int entryOn) {
    if (site.site().wetlandAcresBefore() != null) {
      AreaMethod method = site.site().areaMethod();
      add(
          new Measurement(
              entryOn - HalfDays.DAY,
              method == null ? AreaMethod.ESTIMATE : method,
              site.site().origin(),
              site.site().wetlandAcresBefore()));
    }
  }

  void addVisits(List<Visit> visits) {
    for (Visit visit : visits) {
      if (visit.wetlandAcres() != null) {
        add(
            new Measurement(
                HalfDays.startOf(visit.visitedOn()),
                AreaMethod.WALKED,
                visit.origin(),
                visit.wetlandAcres()));
      }
    }
  }

  void add(Area area) {
    AreaMethod method = area.method() == null ? AreaMethod.ESTIMATE : area.method();
    add(new Measurement(HalfDays.startOf(area.measuredOn()), method, area.origin(), area.acres()));
  }

  private void add(Measurement measurement) {
    best.merge(measurement.at(), measurement, (a, b) -> BEST_FIRST.compare(a, b) <= 0 ? a : b);
  }

  private static int rank(AreaMethod method) {
    return switch (method) {
      case SURVEY -> 0;
      case WALKED -> 1;
      case IMAGERY -> 2;
      case ESTIMATE -> 3;
    };
  }

  /** Acres by half day, one measurement a day. */
  SortedMap<Integer, Double> measured() {
    SortedMap<Integer, Double> acres = new TreeMap<>();
    best.forEach((at, measurement) -> acres.put(at, measurement.acres()));
    return acres;
  }
}
