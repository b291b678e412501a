package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.IntervalCounts;
import pondtally.stats.IntervalDraws;
import pondtally.stats.IntervalEstimate;
import pondtally.stats.Limits;
import pondtally.stats.RiskTable;
import pondtally.stats.SurvivalCurve;
import pondtally.stats.SurvivalFigures;

/**
 * Survival of all devices, of each pipe type and of each kind, estimated from the visits between
 * which failures happened (Turnbull 1976; late entry by Frydman 1994). Figures stop where the
 * product-limit figures do. Limits are approximate, see {@link IntervalCurve}.
 */
public final class IntervalAnalysis {

  private static final String METHOD = "interval";
  private static final int MOST_RESAMPLED = 500;
  private static final int[] ROUNDING_DAYS = {7, 30, 91};
  private static final double[] YEARS = {1, 3, 5, 10};

  private final AnalysisSettings settings;
  private final LifeTally lives;
  private final SortedMap<GroupKey, IntervalEstimate> estimates = new TreeMap<>();
  private final SortedMap<GroupKey, Coarse> coarse = new TreeMap<>();
  private final SortedMap<GroupKey, IntervalCurve> curves = new TreeMap<>();

  /**
   * The estimate that is resampled: with more than {@link #MOST_RESAMPLED} distinct follow-ups
   * their ends are first rounded outward, so that limits cost seconds rather than minutes; that
   * makes them a little wider.
   */
  private record Coarse(IntervalEstimate estimate, int roundedToDays) {
    static Coarse of(IntervalCounts counts, IntervalEstimate fine) {
      int days = 0;
      IntervalCounts rounded = counts;
      for (int i = 0; i < ROUNDING_DAYS.length && rounded.distinct() > MOST_RESAMPLED; i++) {
        days = ROUNDING_DAYS[i];
        rounded = counts.roundedOutward(days);
      }
      return new Coarse(days == 0 ? fine : IntervalEstimate.of(rounded), days);
    }
  }

  private IntervalAnalysis(LifeTally lives, AnalysisSettings settings) {
    this.lives = lives;
    this.settings = settings;
    lives
        .intervals()
        .forEach(
            (key, counts) -> {
              if (isEstimated(key)) {
                IntervalEstimate estimate = IntervalEstimate.of(counts);
                estimates.put(key, estimate);
                coarse.put(key, Coarse.of(counts, estimate));
              }
            });
  }

  private static boolean isEstimated(GroupKey key) {
    return key.grouping() == Grouping.ALL
        || key.grouping() == Grouping.PIPE
        || key.grouping() == Grouping.KIND;
  }

  /** The estimates, still without limits. */
  public static IntervalAnalysis of(LifeTally lives, AnalysisSettings settings) {
    return new IntervalAnalysis(lives, settings);
  }

  /** An empty second pass over the clusters. */
  IntervalSpreads spreads() {
    IntervalSpreads spreads = new IntervalSpreads(settings.seed());
    coarse.forEach(
        (key, c) ->
            spreads.expect(
                key,
                IntervalDraws.ofRounded(
                    c.estimate(), c.roundedToDays(), IntervalSpreads.RESAMPLES)));
    return spreads;
  }

  /** The same with limits from the second pass. */
  public IntervalAnalysis with(SecondPass second) {
    double[] ages = new double[YEARS.length];
    for (int i = 0; i < ages.length; i++) {
      ages[i] = YEARS[i] * Years.DAYS;
    }
    estimates.forEach(
        (key, estimate) ->
            curves.put(
                key,
                new IntervalCurve(
                    estimate,
                    coarse.get(key).estimate(),
                    lives.failures(key),
                    second.intervals().draws(key),
                    second.intervals().clusters(key),
                    ages,
                    horizonDays(key))));
    return this;
  }

  private double horizonDays(GroupKey key) {
    return Math.min(settings.horizonYears() * Years.DAYS, supportedDays(key).orElse(0));
  }

  private OptionalDouble supportedDays(GroupKey key) {
    return SurvivalFigures.of(SurvivalCurve.of(lives.failures(key))).lastTime();
  }

  /** Rows of the result table {@code survival_curves}: one for each innermost interval. */
  public void curves(Consumer<SurvivalAnalysis.CurveRow> rows) {
    curves.forEach(
        (key, curve) -> curve.steps().forEach(step -> rows.accept(curveRow(key, curve, step))));
  }

  private static SurvivalAnalysis.CurveRow curveRow(
      GroupKey key, IntervalCurve curve, IntervalEstimate.Mass step) {
    IntervalCurve.Figure figure = curve.survivalAt(step.rightDays());
    return new SurvivalAnalysis.CurveRow(
        key.grouping().code(),
        key.group(),
        METHOD,
        step.rightDays(),
        step.leftDays(),
        Math.round(step.atRisk()),
        null,
        null,
        step.survivalAfter(),
        Cells.of(figure.stdError()),
        Cells.of(figure.limits().lower()),
        Cells.of(figure.limits().upper()));
  }

  /** Rows of the result table {@code survival_summary}. */
  public List<SurvivalAnalysis.SummaryRow> summaries() {
    List<SurvivalAnalysis.SummaryRow> rows = new ArrayList<>();
    curves.forEach((key, curve) -> rows.add(summary(key, curve)));
    return rows;
  }

  private SurvivalAnalysis.SummaryRow summary(GroupKey key, IntervalCurve curve) {
    RiskTable table = lives.failures(key);
    OptionalDouble supported = supportedDays(key);
    Optional<IntervalCurve.Figure> mean =
        Optional.of(curve.meanLife()).filter(m -> supported.isPresent() && m.value() > 0);
    Double[] s = atYears(key, curve);
    return new SurvivalAnalysis.SummaryRow(
        key.grouping().code(),
        key.group(),
        METHOD,
        lives.devices(key),
        table.lives(),
        table.events(),
        table.timeAtRisk() / Years.DAYS,
        reached(curve, supported, IntervalCurve.Figure::value),
        reached(curve, supported, figure -> figure.limits().lower().orElse(1)),
        reached(curve, supported, figure -> figure.limits().upper().orElse(1)),
        mean.isPresent() ? (Double) (horizonDays(key) / Years.DAYS) : null,
        mean.map(m -> m.value() / Years.DAYS).orElse(null),
        mean.filter(m -> m.stdError().isPresent())
            .map(m -> m.stdError().getAsDouble() / Years.DAYS)
            .orElse(null),
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
        Cells.of(supported),
        estimates.get(key).roundedToDays());
  }

  /** Years by which a curve or one of its limits is at or below one half; null past the support. */
  private static Double reached(
      IntervalCurve curve,
      OptionalDouble supportedDays,
      ToDoubleFunction<IntervalCurve.Figure> side) {
    for (IntervalEstimate.Mass step : curve.steps()) {
      boolean covered = step.rightDays() <= supportedDays.orElse(0);
      if (covered && side.applyAsDouble(curve.survivalAt(step.rightDays())) <= 0.5) {
        return step.rightDays() / Years.DAYS;
      }
    }
    return null;
  }

  private Double[] atYears(GroupKey key, IntervalCurve curve) {
    Double[] cells = new Double[3 * YEARS.length];
    for (int i = 0; i < YEARS.length; i++) {
      Optional<IntervalCurve.Figure> figure = figureAt(key, curve, YEARS[i] * Years.DAYS);
      Limits limits = figure.map(IntervalCurve.Figure::limits).orElse(Limits.none());
      cells[3 * i] = figure.map(IntervalCurve.Figure::value).orElse(null);
      cells[3 * i + 1] = Cells.of(limits.lower());
      cells[3 * i + 2] = Cells.of(limits.upper());
    }
    return cells;
  }

  private Optional<IntervalCurve.Figure> figureAt(GroupKey key, IntervalCurve curve, double days) {
    return days <= supportedDays(key).orElse(0)
        ? Optional.of(curve.survivalAt(days)).filter(figure -> !Double.isNaN(figure.value()))
        : Optional.empty();
  }

  /** Rows of the result table {@code dating_comparison}. */
  public List<DatingAnalysis.Row> datings() {
    List<DatingAnalysis.Row> rows = new ArrayList<>();
    for (Map.Entry<GroupKey, IntervalCurve> entry : curves.entrySet()) {
      GroupKey key = entry.getKey();
      DatingAnalysis.addDated(rows, key, lives.intervals().get(key));
      for (double years : DatingAnalysis.YEARS) {
        Optional<IntervalCurve.Figure> figure = figureAt(key, entry.getValue(), years * Years.DAYS);
        figure.ifPresent(
            f -> rows.add(DatingAnalysis.row(key, METHOD, years, f.value(), f.limits())));
      }
    }
    return rows;
  }
}
