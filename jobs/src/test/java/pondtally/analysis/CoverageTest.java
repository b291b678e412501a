package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The limits hold what they promise: 95 per cent limits of many small simulated programs are asked
 * how often they cover the truth. The truth is what the same devices and visits tend to in a very
 * large program, counted here without the program's own classes, so that it is the sampling error
 * alone that the limits are judged by (not the shift that comes from dating failures by the visit
 * that found them).
 *
 * <p>Judged by the binomial: with {@value #PROGRAMS} programs the standard error of a coverage of
 * 95 per cent is 1.1 points. Limits that are approximate (log-log, bootstrap) must come within 3.29
 * of these of 95, that is 91.4 to 98.6 (a true 95 fails once in a thousand); exact limits must
 * cover at least 94 per cent and may cover more. Found: survival at 1 year 95.5 per cent, at 3
 * years 93.5, failure rate 95.0, cost per property 94.0.
 */
class CoverageTest {

  private static final int PROGRAMS = 400;
  private static final int RESAMPLES = 500;
  private static final int DEVICES_OF_THE_TRUTH = 1_000_000;
  private static final long SEED = 20251231;
  private static final double TOLERANCE = 3.29 * Math.sqrt(0.95 * 0.05 / PROGRAMS);
  private static final double DAYS_PER_YEAR = 365.25;

  private static Truth truth;
  private static final Share ONE_YEAR = new Share();
  private static final Share THREE_YEARS = new Share();
  private static final Share RATE = new Share();
  private static final Share COST = new Share();

  /** What very many devices tend to. */
  private record Truth(
      double survival1y, double survival3y, double per100DeviceYears, double usdPerProperty) {

    static Truth of(int devices) {
      SplittableRandom random = new SplittableRandom(SEED);
      int[] found = new int[4000];
      int[] left = new int[4000];
      double failures = 0;
      double days = 0;
      double usd = 0;
      double properties = 0;
      for (int i = 0; i < devices; i++) {
        SimulatedProgram.Drawn drawn = SimulatedProgram.draw(random);
        int age = drawn.foundAge();
        if (age > 0) {
          found[age]++;
        }
        left[age > 0 ? age : drawn.lastAge()]++;
        failures += drawn.failures();
        days += drawn.upDays();
        usd += drawn.costUsd();
        properties += drawn.lastAge() > 0 ? drawn.properties() : 0;
      }
      return new Truth(
          notFoundFailedBy(DAYS_PER_YEAR, found, left, devices),
          notFoundFailedBy(3 * DAYS_PER_YEAR, found, left, devices),
          100 * failures / (days / DAYS_PER_YEAR),
          usd / properties);
    }

    private static double notFoundFailedBy(double age, int[] found, int[] left, int devices) {
      double share = 1;
      long watched = devices - left[0];
      for (int day = 1; day <= age; day++) {
        share *= 1 - (double) found[day] / watched;
        watched -= left[day];
      }
      return share;
    }
  }

  /** How often limits covered. */
  private static final class Share {
    private int covered;
    private int asked;

    void ask(Double lower, Double upper, double truth) {
      asked++;
      if (lower != null && upper != null && lower <= truth && truth <= upper) {
        covered++;
      }
    }

    double share() {
      return (double) covered / asked;
    }
  }

  @BeforeAll
  static void simulate() {
    truth = Truth.of(DEVICES_OF_THE_TRUTH);
    CostRules costs = new CostRules(SimulatedProgram.prices(), 32, null);
    SplittableRandom random = new SplittableRandom(SEED + 1);
    for (int program = 0; program < PROGRAMS; program++) {
      ask(program, random, costs);
    }
  }

  private static void ask(int program, SplittableRandom random, CostRules costs) {
    AnalysisSettings settings = SimulatedProgram.settings(program, RESAMPLES);
    LifeTally lives = new LifeTally(settings.rules().dating());
    RateTally rates = new RateTally(settings.fiscalYears());
    EffectTally effects = new EffectTally(settings);
    List<EffectPart> parts = new ArrayList<>();
    int devices = 40 + random.nextInt(41);
    for (int i = 0; i < devices; i++) {
      ClusterView view = SimulatedProgram.view(i, SimulatedProgram.draw(random), settings, costs);
      lives.add(view);
      rates.add(view);
      parts.addAll(effects.add(view));
    }
    EffectInfluence influence = effects.influence();
    parts.forEach(influence::add);
    SurvivalAnalysis.SummaryRow survival = SurvivalAnalysis.summaries(lives, settings).get(0);
    ONE_YEAR.ask(survival.survival1yLower(), survival.survival1yUpper(), truth.survival1y);
    THREE_YEARS.ask(survival.survival3yLower(), survival.survival3yUpper(), truth.survival3y);
    RateAnalysis.Row rate =
        RateAnalysis.rows(rates, settings).stream()
            .filter(row -> row.group().equals("all") && row.year().equals("all"))
            .findFirst()
            .orElseThrow();
    RATE.ask(rate.lower(), rate.upper(), truth.per100DeviceYears);
    EffectTally.Row cost =
        effects.rows(influence).stream()
            .filter(row -> row.group().equals("all") && row.measure().equals("per-property"))
            .filter(row -> row.basis().equals("cash"))
            .findFirst()
            .orElseThrow();
    COST.ask(cost.lower(), cost.upper(), truth.usdPerProperty);
  }

  private static void approximate(Share share, String what) {
    assertEquals(PROGRAMS, share.asked);
    assertEquals(0.95, share.share(), TOLERANCE, what + ", coverage");
  }

  @Test
  void survivalAtOneYear() {
    approximate(ONE_YEAR, "survival at 1 year");
  }

  @Test
  void survivalAtThreeYears() {
    approximate(THREE_YEARS, "survival at 3 years");
  }

  @Test
  void costPerProperty() {
    approximate(COST, "cost per property");
  }

  @Test
  void failureRate() {
    assertEquals(PROGRAMS, RATE.asked);
    assertTrue(RATE.share() >= 0.94, "failure rate, coverage " + RATE.share());
  }

  /** The truth itself: a Weibull life and visits every six months on average. */
  @Test
  void truthIsNearTheLifeThatItWasDrawnFrom() {
    double threeYears =
        Math.exp(
            -Math.pow(3 * DAYS_PER_YEAR / SimulatedProgram.SCALE_DAYS, SimulatedProgram.SHAPE));
    assertTrue(truth.survival3y > threeYears && truth.survival3y < threeYears + 0.06);
  }
}
