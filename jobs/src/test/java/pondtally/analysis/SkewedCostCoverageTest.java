package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pondtally.history.Histories;
import pondtally.record.Action;
import pondtally.record.ClusterRecords;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.Property;
import pondtally.record.Site;
import pondtally.record.Visit;

/**
 * How often 95 per cent limits of the cost of a protected property, and of the benefit-cost ratio
 * to date, cover the truth in programs whose costs are badly skewed: log-normal building costs with
 * a deviation of 1 on the log scale (mean 1.65 times the median, skewness 6.2), log-normal damage
 * likewise, one to three properties a site. The truth is that of the distributions, in closed form.
 *
 * <p>Found, in per cent, cost per property and ratio: 10 sites 92.5 and 93.6; 20 sites 91.8 and
 * 94.1; 40 sites 92.9 and 93.2; 100 sites 93.0 and 92.3; with a deviation of 0.5, 40 sites 95.7 and
 * 93.5. Without the widening for few clusters: 87.1 and 88.0, 89.9 and 91.3, 91.8 and 91.2, 92.6
 * and 91.6, 94.6 and 92.6. Most misses of the unit cost lie over the limits: a program that
 * happened to have no very costly site cannot know of them.
 */
@Tag("benchmark")
class SkewedCostCoverageTest {

  private static final int PROGRAMS = 1000;
  private static final int RESAMPLES = 1000;
  private static final int INSTALLED = (int) LocalDate.of(2022, 1, 1).toEpochDay();
  private static final int VISITED = (int) LocalDate.of(2024, 12, 30).toEpochDay();
  private static final double YEARS = (VISITED - INSTALLED) / 365.25;
  private static final double LOG_COST = 7;

  /** Below this something would have to be done. */
  private static final double LEAST = 0.90;

  private static final double LOG_DAMAGE = 6;

  /** Mean of a log-normal variable whose logarithm has deviation 1. */
  private static double mean(double logMean, double spread) {
    return Math.exp(logMean + spread * spread / 2);
  }

  private static final class Share {
    private int asked;
    private int below;
    private int above;
    private int none;

    private void ask(Double lower, Double upper, double truth) {
      asked++;
      if (lower == null || upper == null) {
        none++;
      } else if (truth < lower) {
        below++;
      } else if (truth > upper) {
        above++;
      }
    }

    private double covered() {
      return 1 - (below + above) / (double) (asked - none);
    }

    private String text() {
      return String.format(
          Locale.ROOT,
          "%.1f per cent (truth under the limits %.1f, over them %.1f; without limits %s of %s)",
          100 * covered(),
          100.0 * below / (asked - none),
          100.0 * above / (asked - none),
          none,
          asked);
    }
  }

  @ParameterizedTest
  @CsvSource({"10, 1.0", "20, 1.0", "40, 1.0", "100, 1.0", "40, 0.5"})
  void coverage(int sites, double spread) {
    SplittableRandom random = new SplittableRandom(20251231L + sites);
    CostRules costs = new CostRules(SimulatedProgram.prices(), 32, null);
    Share unit = new Share();
    Share ratio = new Share();
    for (int program = 0; program < PROGRAMS; program++) {
      AnalysisSettings settings = SimulatedProgram.settings(program, RESAMPLES);
      ask(sites, spread, random, settings, costs, unit, ratio);
    }
    String found =
        "%s sites, deviation %s: cost per property %s; benefit-cost ratio %s"
            .formatted(sites, spread, unit.text(), ratio.text());
    System.out.println(found);
    assertTrue(Math.min(unit.covered(), ratio.covered()) >= LEAST, found);
  }

  private static void ask(
      int sites,
      double spread,
      SplittableRandom random,
      AnalysisSettings settings,
      CostRules costs,
      Share unit,
      Share ratio) {
    EffectTally effects = new EffectTally(settings);
    BenefitTally benefits = new BenefitTally(settings);
    List<EffectPart> parts = new ArrayList<>();
    for (int i = 0; i < sites; i++) {
      ClusterView view =
          new ClusterView(
              Histories.of(records(i, spread, random), settings.rules()), new Groups(8), costs);
      parts.addAll(effects.add(view));
      benefits.add(view);
    }
    EffectInfluence influence = effects.influence();
    parts.forEach(influence::add);
    EffectTally.Row cost =
        effects.rows(influence).stream()
            .filter(row -> row.group().equals("all") && row.measure().equals("per-property"))
            .filter(row -> row.basis().equals("cash"))
            .findFirst()
            .orElseThrow();
    unit.ask(cost.lower(), cost.upper(), mean(LOG_COST, spread) / 2);
    BenefitRow row = BenefitToDate.row(GroupKey.ALL, benefits.sums().get(GroupKey.ALL), settings);
    double truth = YEARS * mean(LOG_DAMAGE, spread) / mean(LOG_COST, spread);
    ratio.ask(row.ratioLower(), row.ratioUpper(), truth);
  }

  private static ClusterRecords records(int number, double spread, SplittableRandom random) {
    String id = Integer.toString(number);
    double cost = Math.exp(LOG_COST + spread * gaussian(random));
    double damage = Math.exp(LOG_DAMAGE + spread * gaussian(random));
    List<Property> properties = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      properties.add(
          new Property(row(i), "p", id + "-" + i, id, null, null, null, null, null, null));
    }
    return new ClusterRecords(
        id,
        List.of(site(id, damage)),
        List.of(install(id, cost)),
        List.of(),
        List.of(visit(id)),
        List.of(),
        properties,
        List.of(),
        List.of());
  }

  /** Box and Muller 1958. */
  private static double gaussian(SplittableRandom random) {
    return Math.sqrt(-2 * Math.log(1 - random.nextDouble()))
        * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private static Origin row(int row) {
    return new Origin(0, 0, row + 2, false);
  }

  private static Site site(String id, double damageUsd) {
    return new Site(
        row(0), "p", id, null, null, null, null, null, null, null, damageUsd, null, null, null,
        null, null, null, null, null, null);
  }

  private static Install install(String id, double usd) {
    return new Install(
        row(0), "p", id, id, INSTALLED, null, null, null, null, null, null, null, null, null, null,
        null, null, null, null, null, null, null, null, null, null, usd, null, null, null, null);
  }

  private static Visit visit(String id) {
    return new Visit(
        row(0),
        "p",
        id,
        VISITED,
        Condition.WORKING,
        null,
        Action.NONE,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }
}
