package pondtally.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pondtally.history.FailureDating;
import pondtally.stats.IntervalEstimate;
import pondtally.stats.SurvivalCurve;
import pondtally.stats.SurvivalFigures;

/**
 * By how much the survival curve is off when each failure is dated by the visit that found it, by
 * the middle between two visits, or not dated at all (interval estimate): draws {@code
 * jobs/docs/dating-bias.svg} and prints its figures. Run by {@code mvn -Pbenchmark -pl jobs test
 * -Dtest=DatingBiasBenchmark}.
 */
@Tag("benchmark")
class DatingBiasBenchmark {

  private static final int PROGRAMS = 2000;
  private static final int SITES = 150;
  private static final int STEPS = 24;
  private static final double YEARS_A_STEP = 0.25;
  private static final String[] NAMES = {"visit that found it", "middle", "interval estimate"};

  @Test
  void draw() throws IOException {
    List<double[][]> all =
        IntStream.range(0, PROGRAMS).parallel().mapToObj(DatingBiasBenchmark::errors).toList();
    double[][] bias = new double[NAMES.length][STEPS];
    for (int m = 0; m < NAMES.length; m++) {
      for (int i = 0; i < STEPS; i++) {
        bias[m][i] = mean(all, m, i);
      }
      System.out.printf(
          Locale.ROOT,
          "%-20s points too high at 1, 3, 5 years: %+.2f %+.2f %+.2f%n",
          NAMES[m],
          bias[m][3],
          bias[m][11],
          bias[m][19]);
    }
    Path file = Path.of("docs", "dating-bias.svg");
    Files.createDirectories(file.getParent());
    Files.writeString(file, BiasFigure.svg(bias, NAMES, YEARS_A_STEP));
  }

  /** Points by which the figures of one program are too high; not a number where not stated. */
  private static double[][] errors(int program) {
    SplittableRandom random = new SplittableRandom(20260106 + 7919L * program);
    AnalysisSettings settings = SimulatedProgram.settings(program, 1);
    CostRules costs = new CostRules(SimulatedProgram.prices(), 32, null);
    List<ClusterView> sites = new ArrayList<>();
    for (int i = 0; i < SITES; i++) {
      SimulatedSites.Drawn site = SimulatedSites.SINGLE.draw(random);
      sites.add(SimulatedProgram.view(i, site.watershed(), site.devices(), settings, costs));
    }
    LifeTally found = new LifeTally(FailureDating.DISCOVERY);
    LifeTally middle = new LifeTally(FailureDating.MIDPOINT);
    sites.forEach(found::add);
    sites.forEach(middle::add);
    SurvivalFigures byVisit = figures(found);
    SurvivalFigures byMiddle = figures(middle);
    IntervalEstimate estimate = IntervalEstimate.of(found.intervals().get(GroupKey.ALL));
    double[][] errors = new double[NAMES.length][STEPS];
    for (int i = 0; i < STEPS; i++) {
      double days = (i + 1) * YEARS_A_STEP * Years.DAYS;
      double truth = SimulatedSites.SINGLE.working(days);
      boolean stated = byVisit.survivalAt(days).isPresent();
      errors[0][i] = points(byVisit.survivalAt(days), truth);
      errors[1][i] = points(byMiddle.survivalAt(days), truth);
      errors[2][i] = stated ? 100 * (IntervalShares.at(estimate, days) - truth) : Double.NaN;
    }
    return errors;
  }

  private static SurvivalFigures figures(LifeTally lives) {
    return SurvivalFigures.of(SurvivalCurve.of(lives.failures(GroupKey.ALL)));
  }

  private static double points(OptionalDouble share, double truth) {
    return share.isPresent() ? 100 * (share.getAsDouble() - truth) : Double.NaN;
  }

  private static double mean(List<double[][]> all, int method, int step) {
    return all.stream()
        .mapToDouble(errors -> errors[method][step])
        .filter(Double::isFinite)
        .average()
        .orElseThrow();
  }
}
