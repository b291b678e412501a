package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.Holm;
import pondtally.stats.Limits;
import pondtally.stats.RestrictedMean;
import pondtally.stats.SurvivalCurve;
import pondtally.stats.SurvivalFigures;

/**
 * Differences in mean life between each pair of groups, both up to the last age at which either
 * still has five lives at risk, and at most the horizon of the settings (Royston and Parmar 2013);
 * adjusted within the grouping (Holm 1979). Where one of the two groups had no failure by then its
 * mean has no error, and the difference neither limits nor a p value.
 */
public final class MeanLifeAnalysis {

  private static final List<Grouping> GROUPINGS =
      List.of(
          Grouping.PIPE,
          Grouping.KIND,
          Grouping.WATERSHED,
          Grouping.CREW,
          Grouping.BUILD,
          Grouping.SETTING);

  private MeanLifeAnalysis() {}

  /** One row of the result table {@code mean_life_differences}. */
  public record Row(
      String grouping,
      String groupA,
      String groupB,
      Double horizonYears,
      Double differenceYears,
      Double stdError,
      Double lower,
      Double upper,
      Double pValue,
      Double pAdjusted) {}

  /** A difference in days and the age up to which it was worked out. */
  private record Compared(
      Comparisons.Pair pair,
      double horizonDays,
      RestrictedMean.Difference difference,
      boolean testable) {

    OptionalDouble p() {
      return testable ? difference.pValue() : OptionalDouble.empty();
    }

    Row row(OptionalDouble adjusted) {
      Limits limits = testable ? difference.limits().times(1 / Years.DAYS) : Limits.none();
      return new Row(
          pair.a().grouping().code(),
          pair.a().group(),
          pair.b().group(),
          horizonDays / Years.DAYS,
          difference.difference() / Years.DAYS,
          testable ? (Double) (difference.stdError() / Years.DAYS) : null,
          Cells.of(limits.lower()),
          Cells.of(limits.upper()),
          Cells.of(p()),
          Cells.of(adjusted));
    }
  }

  /** The rows of the result table; pairs that were never followed long enough have none. */
  public static List<Row> rows(LifeTally tally, AnalysisSettings settings) {
    double horizonDays = settings.horizonYears() * Years.DAYS;
    List<Row> rows = new ArrayList<>();
    for (Grouping grouping : GROUPINGS) {
      List<Compared> all =
          Comparisons.pairs(Comparisons.groups(tally, grouping, settings.groupsBelow())).stream()
              .flatMap(pair -> compare(tally, pair, horizonDays).stream())
              .toList();
      List<OptionalDouble> adjusted = Holm.adjust(all.stream().map(Compared::p).toList());
      for (int i = 0; i < all.size(); i++) {
        rows.add(all.get(i).row(adjusted.get(i)));
      }
    }
    return rows;
  }

  private static Optional<Compared> compare(
      LifeTally tally, Comparisons.Pair pair, double mostDays) {
    SurvivalCurve a = SurvivalCurve.of(tally.failures(pair.a()));
    SurvivalCurve b = SurvivalCurve.of(tally.failures(pair.b()));
    double horizon = Math.min(mostDays, Math.min(supported(a), supported(b)));
    if (!(horizon > 0)) {
      return Optional.empty();
    }
    RestrictedMean first = a.restrictedMean(horizon);
    RestrictedMean second = b.restrictedMean(horizon);
    boolean testable = first.stdError() > 0 && second.stdError() > 0;
    return Optional.of(new Compared(pair, horizon, first.minus(second), testable));
  }

  private static double supported(SurvivalCurve curve) {
    return SurvivalFigures.of(curve).lastTime().orElse(0);
  }
}
