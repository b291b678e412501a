package pondtally.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Proportional-hazards model (Cox 1972): a device with covariates x fails at age t at the rate
 * λ_s(t) exp(xβ), whatever the shape of the stratum's own λ_s. β maximizes the partial likelihood,
 * ties by Efron (1977) or Breslow (1974), late entry by leaving a life out of the risk set until it
 * is under observation. Ages are days; coefficients are per unit of the covariate.
 *
 * <p>Assumes that ratios do not change with age ({@link #proportionality} tests it), that lives end
 * observation for reasons unrelated to their condition, and, for model errors, that lives are
 * independent; {@link #withClusters} drops the last (Lin &amp; Wei 1989). Limits: normal limits on
 * β are poor under about ten failures a coefficient. Comparisons are observational.
 *
 * <p>A coefficient that has no estimate (no device, no failure, redundant) is a term with a reason,
 * never a large number.
 */
public final class ProportionalHazards {
  private final HazardData data;
  private final HazardDesign design;
  private final HazardTies ties;
  private final HazardLikelihood atZero;
  private final HazardNewton.Maximum maximum;
  private final HazardColumns columns;
  private final int[] estimable;
  private final double[][] modelCovariance;
  private final Optional<double[][]> robustCovariance;

  private ProportionalHazards(HazardPatterns patterns, HazardDesign design, HazardTies ties) {
    this.design = design;
    this.ties = ties;
    data = HazardData.of(patterns);
    atZero = HazardLikelihood.at(data, new double[patterns.columns()], ties);
    columns = HazardColumns.of(data, design, atZero.information());
    int[] kept = columns.kept();
    maximum = HazardNewton.maximize(data, ties, kept, atZero);
    estimable = finite(kept, maximum.infinite);
    modelCovariance = HazardInverse.part(maximum.covariance, placesOf(estimable, kept));
    robustCovariance = Optional.empty();
  }

  private ProportionalHazards(ProportionalHazards fit, double[][] robust) {
    data = fit.data;
    design = fit.design;
    ties = fit.ties;
    atZero = fit.atZero;
    maximum = fit.maximum;
    columns = fit.columns;
    estimable = fit.estimable;
    modelCovariance = fit.modelCovariance;
    robustCovariance = Optional.of(robust);
  }

  /**
   * Fits the model.
   *
   * @param patterns the lives, with the columns of the design
   * @throws IllegalArgumentException when design and patterns differ in columns
   */
  public static ProportionalHazards fit(
      HazardPatterns patterns, HazardDesign design, HazardTies ties) {
    if (design.columns().size() != patterns.columns()) {
      throw new IllegalArgumentException(
          "the design has "
              + design.columns().size()
              + " columns, the patterns "
              + patterns.columns());
    }
    return new ProportionalHazards(patterns, design, ties);
  }

  private static int[] finite(int[] kept, boolean[] infinite) {
    List<Integer> finite = new ArrayList<>();
    for (int i = 0; i < kept.length; i++) {
      if (!infinite[i]) {
        finite.add(kept[i]);
      }
    }
    return finite.stream().mapToInt(Integer::intValue).toArray();
  }

  private static int[] placesOf(int[] some, int[] all) {
    int[] places = new int[some.length];
    for (int i = 0; i < some.length; i++) {
      places[i] = Arrays.binarySearch(all, some[i]);
    }
    return places;
  }

  /** Lives in the fit. */
  public long lives() {
    return data.lives;
  }

  /** Of them, seen to fail. */
  public long failures() {
    return data.failures;
  }

  /** The columns of the design in order, each with its estimate or the reason why there is none. */
  public List<HazardTerm> terms() {
    List<HazardTerm> terms = new ArrayList<>();
    int at = 0;
    for (int j = 0; j < design.columns().size(); j++) {
      boolean known = at < estimable.length && estimable[at] == j;
      Optional<HazardTerm.Estimate> estimate =
          known ? Optional.of(estimate(at++)) : Optional.empty();
      Optional<String> reason = known ? Optional.empty() : Optional.of(reason(j));
      terms.add(
          new HazardTerm(
              design.columns().get(j), data.livesWith[j], data.failuresWith[j], estimate, reason));
    }
    return Collections.unmodifiableList(terms);
  }

  private HazardTerm.Estimate estimate(int i) {
    OptionalDouble robust =
        robustCovariance.isPresent()
            ? OptionalDouble.of(Math.sqrt(robustCovariance.get()[i][i]))
            : OptionalDouble.empty();
    return HazardTerm.Estimate.of(
        maximum.beta[estimable[i]], Math.sqrt(modelCovariance[i][i]), robust);
  }

  private String reason(int j) {
    if (columns.reason(j) != null) {
      return columns.reason(j);
    }
    HazardDesign.Column column = design.columns().get(j);
    if (column.level().isEmpty()) {
      return "the devices that failed differ completely from the others at risk, so the ratio has no finite estimate";
    }
    if (data.failuresWith[j] == 0) {
      return "no failure among the "
          + data.livesWith[j]
          + " devices at this level, so the ratio has no estimate above 0";
    }
    long elsewhere = 0;
    for (int k = 0; k < design.columns().size(); k++) {
      elsewhere += design.columns().get(k).term().equals(column.term()) ? data.failuresWith[k] : 0;
    }
    return elsewhere == data.failures
        ? "no failure at the reference level "
            + column.reference()
            + ", so ratios to it have no finite estimate"
        : "failures and level go together completely, so the ratio has no finite estimate";
  }

  /** Log partial likelihood with all coefficients 0. */
  public double logLikelihoodNull() {
    return atZero.value();
  }

  /** Log partial likelihood at its maximum (its limit, where a coefficient is infinite). */
  public double logLikelihood() {
    return maximum.likelihood.value();
  }

  /** Newton iterations. */
  public int iterations() {
    return maximum.iterations;
  }

  /**
   * Likelihood-ratio test that all coefficients are 0: 2(ℓ − ℓ0); empty without a column that tells
   * anything.
   */
  public Optional<HazardTest> likelihoodRatioTest() {
    int degrees = columns.kept().length;
    return degrees == 0
        ? Optional.empty()
        : Optional.of(HazardTest.of(2 * (logLikelihood() - logLikelihoodNull()), degrees));
  }

  /**
   * Score test of the same, U(0)ᵀ I(0)⁻¹ U(0); for one factor and no ties this is the log-rank
   * test.
   */
  public Optional<HazardTest> scoreTest() {
    int[] kept = columns.kept();
    if (kept.length == 0) {
      return Optional.empty();
    }
    double[][] inverse = HazardInverse.of(HazardInverse.part(atZero.information(), kept));
    return Optional.of(
        HazardTest.of(
            HazardInverse.form(inverse, HazardInverse.part(atZero.score(), kept)), kept.length));
  }

  /**
   * Wald test that all estimated coefficients are 0, βᵀ V⁻¹ β, V robust where clusters were given.
   */
  public Optional<HazardTest> waldTest() {
    if (estimable.length == 0) {
      return Optional.empty();
    }
    double[][] inverse = HazardInverse.of(robustCovariance.orElse(modelCovariance));
    return Optional.of(
        HazardTest.of(
            HazardInverse.form(inverse, HazardInverse.part(maximum.beta, estimable)),
            estimable.length));
  }

  /** Score test with clustered errors, U(0)ᵀ (Σ UUᵀ)⁻¹ U(0), from sums of {@link #scoresAtZero}. */
  public Optional<HazardTest> robustScoreTest(HazardClusterSums atZeroSums) {
    if (columns.kept().length == 0) {
      return Optional.empty();
    }
    double[][] inverse = HazardInverse.of(atZeroSums.products());
    return Optional.of(
        HazardTest.of(HazardInverse.form(inverse, atZeroSums.sum()), columns.kept().length));
  }

  /** Numbers of the design's columns that have an estimate, in the order of the covariance. */
  public int[] estimableColumns() {
    return estimable.clone();
  }

  /** Covariance of the estimated coefficients, robust where clusters were given. */
  public double[][] covariance() {
    return Arrays.stream(robustCovariance.orElse(modelCovariance))
        .map(double[]::clone)
        .toArray(double[][]::new);
  }

  /**
   * Score residuals at the maximum: add up a cluster's lives, give the sum to {@link
   * HazardClusterSums}, then {@link #withClusters}.
   */
  public HazardScores scores() {
    return HazardScores.of(data, maximum.beta, columns.kept(), ties);
  }

  /** Score residuals with all coefficients 0, for {@link #robustScoreTest}. */
  public HazardScores scoresAtZero() {
    return HazardScores.of(data, new double[atZero.score().length], columns.kept(), ties);
  }

  /**
   * This fit with errors that allow for likeness within clusters: V = I⁻¹ (Σ UUᵀ) I⁻¹ (Lin &amp;
   * Wei 1989).
   */
  public ProportionalHazards withClusters(HazardClusterSums sums) {
    int[] kept = columns.kept();
    double[][] bread = maximum.covariance;
    double[][] meat = sums.products();
    double[][] robust = new double[kept.length][kept.length];
    for (int i = 0; i < kept.length; i++) {
      double[] row = HazardInverse.times(meat, bread[i]);
      robust[i] = HazardInverse.times(bread, row);
    }
    return new ProportionalHazards(this, HazardInverse.part(robust, placesOf(estimable, kept)));
  }

  /** How well predicted hazards order the lives. */
  public HazardConcordance concordance() {
    return HazardConcordance.of(data, data.predictors(maximum.beta));
  }

  /** Tests that ratios do not drift with age. */
  public HazardProportionality proportionality(HazardTransform transform) {
    return HazardProportionality.of(
        data, maximum.beta, ties, estimable, transform, design.columns().size());
  }

  /**
   * Baseline cumulative hazard by stratum, for reference levels and numbers of 0; with an infinite
   * coefficient it is that of its limit.
   */
  public SortedMap<String, HazardBaseline> baselines() {
    double shift = 0;
    for (int j = 0; j < data.center.length; j++) {
      shift += data.center[j] * maximum.beta[j];
    }
    double atZeroCovariates = Math.exp(-shift);
    List<double[]> steps = new ArrayList<>();
    data.strata.forEach(s -> steps.add(new double[s.days.length]));
    HazardSweep.over(
        data,
        maximum.beta,
        ties,
        (s, day, m) -> steps.get(s)[day] = m.inverse[0] * atZeroCovariates);
    TreeMap<String, HazardBaseline> baselines = new TreeMap<>();
    for (int s = 0; s < steps.size(); s++) {
      baselines.put(
          data.strata.get(s).name, new HazardBaseline(data.strata.get(s).days, steps.get(s)));
    }
    return baselines;
  }
}
