package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import pondtally.stats.Limits;
import pondtally.stats.RestrictedMean;
import pondtally.stats.RiskTable;
import pondtally.stats.SurvivalCurve;
import pondtally.stats.SurvivalFigures;

/** Product-limit curves and what is read off them, for every group. */
public final class SurvivalAnalysis {

  private static final String METHOD = "product-limit";

  private SurvivalAnalysis() {}

  /** One row of the result table {@code survival_curves}. */
  public record CurveRow(
      String grouping,
      String group,
      String method,
      Double timeDays,
      Double fromDays,
      Long atRisk,
      Long events,
      Long censored,
      Double survival,
      Double stdError,
      Double lower,
      Double upper) {}

  /** One row of the result table {@code survival_summary}. */
  public record SummaryRow(
      String grouping,
      String group,
      String method,
      Long devices,
      Long lives,
      Long failures,
      Double deviceYears,
      Double medianYears,
      Double medianLower,
      Double medianUpper,
      Double meanLifeHorizonYears,
      Double meanLifeYears,
      Double meanLifeStdError,
      Double survival1y,
      Double survival1yLower,
      Double survival1yUpper,
      Double survival3y,
      Double survival3yLower,
      Double survival3yUpper,
      Double survival5y,
      Double survival5yLower,
      Double survival5yUpper,
      Double survival10y,
      Double survival10yLower,
      Double survival10yUpper,
      Double supportedDays,
      Integer roundedToDays) {}

  /** The rows of the result table {@code survival_curves}: every age at which a life ended. */
  public static void curves(LifeTally tally, Consumer<CurveRow> rows) {
    for (GroupKey key : tally.lives().keySet()) {
      SurvivalCurve curve = SurvivalCurve.of(tally.failures(key));
      for (int row = 0; row < curve.rows(); row++) {
        Limits limits = curve.limits(row);
        rows.accept(
            new CurveRow(
                key.grouping().code(),
                key.group(),
                METHOD,
                curve.time(row),
                null,
                curve.atRisk(row),
                curve.events(row),
                curve.censored(row),
                curve.survival(row),
                Cells.of(curve.stdError(row)),
                Cells.of(limits.lower()),
                Cells.of(limits.upper())));
      }
    }
  }

  /** The rows of the result table {@code survival_summary}: one for each group. */
  public static List<SummaryRow> summaries(LifeTally tally, AnalysisSettings settings) {
    List<SummaryRow> rows = new ArrayList<>();
    for (GroupKey key : tally.lives().keySet()) {
      rows.add(summary(key, tally, settings));
    }
    return rows;
  }

  private static SummaryRow summary(GroupKey key, LifeTally tally, AnalysisSettings settings) {
    RiskTable table = tally.failures(key);
    SurvivalFigures figures = SurvivalFigures.of(SurvivalCurve.of(table));
    Limits median = figures.medianLimits();
    Optional<RestrictedMean> mean = figures.meanLife(settings.horizonYears() * Years.DAYS);
    Double[] s = atYears(figures, 1, 3, 5, 10);
    return new SummaryRow(
        key.grouping().code(),
        key.group(),
        METHOD,
        tally.devices(key),
        table.lives(),
        table.events(),
        table.timeAtRisk() / Years.DAYS,
        years(figures.median()),
        years(median.lower()),
        years(median.upper()),
        mean.map(m -> m.horizon() / Years.DAYS).orElse(null),
        mean.map(m -> m.mean() / Years.DAYS).orElse(null),
        mean.map(m -> m.stdError() / Years.DAYS).orElse(null),
        s[0],
        s[1],
        s[2],
        s[3],
        s[4],
        s[5],
        s[6],
        s[7],
        s[8],
        s[9],
        s[10],
        s[11],
        Cells.of(figures.lastTime()),
        null);
  }

  /** Share not failed with its lower and upper limit at each number of years. */
  private static Double[] atYears(SurvivalFigures figures, int... years) {
    Double[] cells = new Double[3 * years.length];
    for (int i = 0; i < years.length; i++) {
      double days = years[i] * Years.DAYS;
      cells[3 * i] = Cells.of(figures.survivalAt(days));
      cells[3 * i + 1] = Cells.of(figures.limitsAt(days).lower());
      cells[3 * i + 2] = Cells.of(figures.limitsAt(days).upper());
    }
    return cells;
  }

  private static Double years(OptionalDouble days) {
    return days.isPresent() ? (Double) (days.getAsDouble() / Years.DAYS) : null;
  }
}
