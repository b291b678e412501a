package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pondtally.stats.ExponentialFit;
import pondtally.stats.FitCheck;
import pondtally.stats.HazardTest;
import pondtally.stats.IntervalCounts;
import pondtally.stats.IntervalEstimate;
import pondtally.stats.ParametricDistribution;
import pondtally.stats.ParametricEstimate;
import pondtally.stats.ParametricFit;
import pondtally.stats.WeibullFit;

/**
 * Weibull and exponential distributions fitted to the lives of each group, failures dated as the
 * settings say ({@code interval} keeps both ends), and how far they lie from the curve that assumes
 * no distribution.
 */
public final class FitAnalysis {

  private static final double SIGNIFICANT = 0.05;

  private final Map<GroupKey, Fits> fits = new TreeMap<>();

  private FitAnalysis(LifeTally tally) {
    tally.dated().forEach((key, counts) -> fits.put(key, Fits.of(counts)));
  }

  /** Fits every group. */
  public static FitAnalysis of(LifeTally tally) {
    return new FitAnalysis(tally);
  }

  /** Both fits of one group, and its curve. */
  private record Fits(ParametricFit weibull, ParametricFit exponential, IntervalEstimate curve) {
    static Fits of(IntervalCounts counts) {
      return new Fits(
          WeibullFit.of(counts), ExponentialFit.of(counts), IntervalEstimate.of(counts));
    }

    List<ParametricFit> both() {
      return List.of(weibull, exponential);
    }
  }

  /** One row of the result table {@code parametric_fits}. */
  public record FitRow(
      String grouping,
      String group,
      String distribution,
      Long lives,
      Long failures,
      Double shape,
      Double scaleDays,
      Double logLikelihood,
      Double shapeLower,
      Double shapeUpper,
      Double scaleLower,
      Double scaleUpper,
      String reason) {}

  /** One row of the result table {@code fit_check}. */
  public record CheckRow(
      String grouping,
      String group,
      String distribution,
      Double largestGap,
      Double atDays,
      Double pValue,
      String statement) {}

  /** The rows of the result table {@code parametric_fits}. */
  public List<FitRow> rows() {
    List<FitRow> rows = new ArrayList<>();
    fits.forEach((key, group) -> group.both().forEach(fit -> rows.add(row(key, fit))));
    return rows;
  }

  private static FitRow row(GroupKey key, ParametricFit fit) {
    Optional<ParametricEstimate> shape = fit.shape();
    Optional<ParametricEstimate> scale = fit.scaleDays();
    return new FitRow(
        key.grouping().code(),
        key.group(),
        name(fit),
        fit.lives(),
        fit.failures(),
        shape.map(ParametricEstimate::value).orElse(null),
        scale.map(ParametricEstimate::value).orElse(null),
        Cells.of(fit.logLikelihood()),
        shape.map(ParametricEstimate::lower).orElse(null),
        shape.map(ParametricEstimate::upper).orElse(null),
        scale.map(ParametricEstimate::lower).orElse(null),
        scale.map(ParametricEstimate::upper).orElse(null),
        fit.reason().orElse(null));
  }

  /** The rows of the result table {@code fit_check}. */
  public List<CheckRow> checks() {
    List<CheckRow> rows = new ArrayList<>();
    fits.forEach((key, group) -> group.both().forEach(fit -> rows.add(check(key, fit, group))));
    return rows;
  }

  private static CheckRow check(GroupKey key, ParametricFit fit, Fits group) {
    FitCheck check = FitCheck.of(fit, group.curve(), group.weibull(), group.exponential());
    return new CheckRow(
        key.grouping().code(),
        key.group(),
        name(fit),
        Cells.of(check.largestGap()),
        Cells.of(check.gapAtDays()),
        check.weibullAgainstExponential().map(HazardTest::pValue).orElse(null),
        statement(fit, check, group.weibull()));
  }

  private static String statement(ParametricFit fit, FitCheck check, ParametricFit weibull) {
    if (check.largestGap().isEmpty()) {
      return "Not fitted: " + fit.reason().orElse("no curve to compare with") + ".";
    }
    String distance =
        String.format(
            Locale.ROOT,
            "At most %.1f of 100 devices away from the curve that assumes no distribution, at day %.0f.",
            100 * check.largestGap().getAsDouble(),
            check.gapAtDays().getAsDouble());
    return distance
        + check.weibullAgainstExponential().map(test -> " " + withAge(test, weibull)).orElse("");
  }

  private static String withAge(HazardTest test, ParametricFit weibull) {
    if (test.pValue() >= SIGNIFICANT) {
      return "The records do not show that the failure rate changes with age.";
    }
    boolean rises = weibull.shape().orElseThrow().value() > 1;
    return "The failure rate "
        + (rises ? "rises" : "falls")
        + " with age by more than chance explains: the exponential distribution, which holds it"
        + " constant, does not describe these lives.";
  }

  private static String name(ParametricFit fit) {
    return fit.distribution() == ParametricDistribution.WEIBULL ? "weibull" : "exponential";
  }
}
