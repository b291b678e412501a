package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import pondtally.check.CheckSettings;
import pondtally.check.CheckedCluster;
import pondtally.check.ClusterChecks;
import pondtally.history.FailureDating;
import pondtally.history.FailureDefinition;
import pondtally.history.Histories;
import pondtally.history.HistoryRules;
import pondtally.history.PondHistory;
import pondtally.history.RandomClusters;
import pondtally.record.ClusterRecords;
import pondtally.record.Evidence;
import pondtally.record.Origin;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.stats.PriceIndex;

/** What must hold of the counts of every program, over hundreds of invented ones. */
class RandomProgramsTest {

  private static final int PROGRAMS = 150;
  private static final int CLUSTERS = 6;
  private static final int AS_OF = 1000;
  private static final double ROUNDING = 1e-9;

  /** Fiscal years that begin on the day of the year on which {@code periodFrom} falls. */
  private static AnalysisSettings settings(int periodFrom) {
    return new AnalysisSettings(
        new HistoryRules(FailureDefinition.FAILED, FailureDating.INTERVAL, AS_OF, 180),
        periodFrom,
        AS_OF,
        8,
        1972,
        0.07,
        10,
        32,
        null,
        5,
        1,
        1);
  }

  private static ClusterView view(ClusterRecords records, AnalysisSettings settings) {
    TreeMap<Integer, Double> prices = new TreeMap<>();
    for (int year = 1969; year <= 1973; year++) {
      prices.put(year, 100.0);
    }
    return new ClusterView(
        Histories.of(records, settings.rules()),
        new Groups(8),
        new CostRules(new Prices(PriceIndex.of(prices), 1972), 32, null));
  }

  private static List<ClusterRecords> program(int number) {
    List<ClusterRecords> clusters = new ArrayList<>();
    for (int i = 0; i < CLUSTERS; i++) {
      clusters.add(RandomClusters.of((long) number * CLUSTERS + i));
    }
    return clusters;
  }

  /** One year's figure of all devices against the whole record's. */
  private static <R> void assertAddsUp(
      List<R> rows, Function<R, String> year, ToDoubleFunction<R> figure, String what) {
    double all = 0;
    double years = 0;
    for (R row : rows) {
      if (year.apply(row).equals(Years.ALL)) {
        all += figure.applyAsDouble(row);
      } else {
        years += figure.applyAsDouble(row);
      }
    }
    assertEquals(all, years, ROUNDING * Math.max(1, all), what);
  }

  private static double orZero(Double figure) {
    return figure == null ? 0 : figure;
  }

  @Test
  void yearsAddUpToTheWholeRecordInWhateverMonthTheyBegin() {
    for (int program = 0; program < PROGRAMS; program++) {
      AnalysisSettings settings = settings(program * 31 % 365);
      WetlandTally wetland = new WetlandTally(settings);
      PropertyTally properties = new PropertyTally(settings);
      RateTally rates = new RateTally(settings.fiscalYears());
      for (ClusterRecords cluster : program(program)) {
        ClusterView view = view(cluster, settings);
        wetland.add(view);
        properties.add(view);
        rates.add(view);
      }
      String what = "program " + program;
      assertAddsUp(
          wetland.rows().stream().filter(row -> row.grouping().equals("all")).toList(),
          WetlandTally.Row::year,
          row -> orZero(row.acreYears()),
          what + " acre-years");
      assertAddsUp(
          properties.rows().stream()
              .filter(row -> row.grouping().equals("all"))
              .filter(row -> row.propertyType().equals("all"))
              .toList(),
          PropertyTally.Row::year,
          row -> orZero(row.propertyYears()),
          what + " property-years");
      List<RateAnalysis.Row> all =
          RateAnalysis.rows(rates, settings).stream()
              .filter(row -> row.grouping().equals("all"))
              .toList();
      assertAddsUp(all, RateAnalysis.Row::year, row -> row.failures(), what + " failures");
      assertAddsUp(all, RateAnalysis.Row::year, row -> row.deviceYears(), what + " device-years");
    }
  }

  @Test
  void aPondNeverCountsMoreThanItsAreaOverTheTimeOfTheYear() {
    AnalysisSettings settings = settings(181);
    int asked = 0;
    for (int program = 0; program < PROGRAMS; program++) {
      for (ClusterRecords cluster : program(program)) {
        ClusterView view = view(cluster, settings);
        double largest = 0;
        for (PondHistory pond : view.history().ponds()) {
          largest +=
              pond.area() == null
                  ? 0
                  : pond.area().measurements().values().stream().max(Double::compare).orElse(0.0);
        }
        WetlandTally wetland = new WetlandTally(settings);
        wetland.add(view);
        for (WetlandTally.Row row : wetland.rows()) {
          double years = row.year().equals(Years.ALL) ? (AS_OF + 1) / 365.25 : 366 / 365.25;
          assertTrue(orZero(row.acreYears()) <= largest * years + ROUNDING, row.toString());
          asked++;
        }
      }
    }
    assertTrue(asked > 1000, "rows asked: " + asked);
  }

  /** A second partner reports the same removals and the same properties once more. */
  @Test
  void removingAPartnersDoubleClaimChangesNothingElse() {
    Random random = new Random(1);
    for (int program = 0; program < PROGRAMS; program++) {
      for (ClusterRecords cluster : program(program)) {
        ClusterRecords once = withRemovals(cluster, random);
        ClusterRecords twice = withDoubleClaims(once);
        CheckSettings checks = new CheckSettings(AS_OF, AS_OF + 30);
        CheckedCluster expected = ClusterChecks.check(once, checks);
        CheckedCluster actual = ClusterChecks.check(twice, checks);
        assertEquals(expected.kept(), actual.kept());
        assertEquals(
            expected.verdicts().size() + once.removals().size() + once.properties().size(),
            actual.verdicts().size());
      }
    }
  }

  private static ClusterRecords withRemovals(ClusterRecords cluster, Random random) {
    List<Removal> removals = new ArrayList<>();
    cluster
        .sites()
        .forEach(
            site -> {
              for (int year = 1970; year <= 1972; year++) {
                removals.add(
                    new Removal(
                        new Origin(1, 0, removals.size() + 2, false),
                        "first",
                        site.siteId(),
                        year,
                        (double) random.nextInt(4),
                        (double) random.nextInt(3),
                        Evidence.LOG));
              }
            });
    return with(cluster, removals, cluster.properties());
  }

  private static ClusterRecords withDoubleClaims(ClusterRecords cluster) {
    List<Removal> removals = new ArrayList<>(cluster.removals());
    for (Removal row : cluster.removals()) {
      removals.add(
          new Removal(
              new Origin(9, 0, row.origin().row(), false),
              "second",
              row.siteId(),
              row.year(),
              row.removals(),
              row.avoided(),
              row.evidence()));
    }
    List<Property> properties = new ArrayList<>(cluster.properties());
    for (Property row : cluster.properties()) {
      properties.add(
          new Property(
              new Origin(9, 1, row.origin().row(), false),
              "second",
              row.propertyId(),
              row.siteId(),
              row.propertyType(),
              row.protectedFrom(),
              row.protectedUntil(),
              row.damagePerYearUsd(),
              row.damageYear(),
              row.owner()));
    }
    return with(cluster, removals, properties);
  }

  private static ClusterRecords with(
      ClusterRecords cluster, List<Removal> removals, List<Property> properties) {
    return new ClusterRecords(
        cluster.cluster(),
        cluster.sites(),
        cluster.installs(),
        cluster.materials(),
        cluster.visits(),
        removals,
        properties,
        cluster.areas(),
        cluster.requests());
  }
}
