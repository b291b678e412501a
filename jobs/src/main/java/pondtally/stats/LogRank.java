package pondtally.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Test of equal survival in two or more groups, by weighted observed less expected failures: U = Σ
 * w (d_j − d·n_j/n) over failure times, with the hypergeometric covariance V, and χ² = U′V⁻U.
 * Sources: Mantel 1966; weights see {@link LogRankWeight}; Klein &amp; Moeschberger 2003, sections
 * 7.3 to 7.5. Strata add up U and V. Delayed entry is allowed. No units.
 *
 * <p>Assumes independent lives and censoring that has nothing to do with condition. With few
 * failures the chi-square distribution is rough. What cannot be tested (one group, no failures,
 * groups that were never at risk together) has no statistic: that is a value, not an error.
 */
public final class LogRank {
  private final LogRankSums sums;
  private final QuadraticForm form;
  private final long[] lives;

  private LogRank(LogRankSums sums, long[] lives) {
    this.sums = sums;
    this.lives = lives;
    this.form = QuadraticForm.of(sums.score, sums.covariance);
  }

  /** Compares groups; their order is that of all results. */
  public static LogRank of(List<RiskTable> groups, LogRankWeight weight) {
    return stratified(List.of(groups), weight);
  }

  /**
   * Compares groups within strata.
   *
   * @param strata for each stratum its groups, in the same order and of the same number in all; a
   *     group that a stratum lacks is {@link RiskTable#empty()}
   * @throws IllegalArgumentException if the numbers of groups differ
   */
  public static LogRank stratified(List<List<RiskTable>> strata, LogRankWeight weight) {
    int groups = strata.isEmpty() ? 0 : strata.get(0).size();
    LogRankSums sums = new LogRankSums(groups, weight);
    long[] lives = new long[groups];
    for (List<RiskTable> stratum : strata) {
      if (stratum.size() != groups) {
        throw new IllegalArgumentException(
            "a stratum has " + stratum.size() + " groups, the first has " + groups);
      }
      sums.add(stratum);
      for (int j = 0; j < groups; j++) {
        lives[j] += stratum.get(j).lives();
      }
    }
    return new LogRank(sums, lives);
  }

  /**
   * Every pair of groups, with p values adjusted together by Holm's method. Pairs without a
   * statistic stay without, and are not counted among the tests.
   */
  public static List<Pair> pairwise(List<List<RiskTable>> strata, LogRankWeight weight) {
    int groups = strata.isEmpty() ? 0 : strata.get(0).size();
    List<LogRank> tests = new ArrayList<>();
    List<int[]> places = new ArrayList<>();
    for (int a = 0; a < groups; a++) {
      for (int b = a + 1; b < groups; b++) {
        tests.add(stratified(only(strata, a, b), weight));
        places.add(new int[] {a, b});
      }
    }
    List<OptionalDouble> adjusted = Holm.adjust(tests.stream().map(LogRank::pValue).toList());
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < tests.size(); i++) {
      pairs.add(new Pair(places.get(i)[0], places.get(i)[1], tests.get(i), adjusted.get(i)));
    }
    return pairs;
  }

  private static List<List<RiskTable>> only(List<List<RiskTable>> strata, int a, int b) {
    return strata.stream().map(s -> List.of(s.get(a), s.get(b))).toList();
  }

  /** Number of groups. */
  public int groups() {
    return lives.length;
  }

  /** Lives of a group, over all strata. */
  public long lives(int group) {
    return lives[group];
  }

  /** Σ w·d_j of a group; the number of its failures under log-rank weights. */
  public double observed(int group) {
    return sums.observed[group];
  }

  /** Σ w·d·n_j/n of a group: what it would have if all groups failed alike. */
  public double expected(int group) {
    return sums.expected[group];
  }

  /** U of a group, observed less expected. */
  public double score(int group) {
    return sums.score[group];
  }

  /** Covariance of U between two groups; the variance if they are the same. */
  public double covariance(int group, int other) {
    return sums.covariance[group][other];
  }

  /** χ²; empty if nothing can be tested. */
  public OptionalDouble chiSquare() {
    return degreesOfFreedom() > 0 ? OptionalDouble.of(form.value()) : OptionalDouble.empty();
  }

  /** Rank of the covariance: groups less one, or fewer where groups were never at risk together. */
  public int degreesOfFreedom() {
    return form.rank();
  }

  /** P(χ² or more) if all groups fail alike; empty if nothing can be tested. */
  public OptionalDouble pValue() {
    return degreesOfFreedom() > 0
        ? OptionalDouble.of(Quantile.chiSquareAbove(form.value(), degreesOfFreedom()))
        : OptionalDouble.empty();
  }

  /**
   * Test of a trend over ordered groups: z = Σ a_j·U_j / √(a′Va). Source: Tarone 1975.
   *
   * @param scores a_j, one for each group, such as 1, 2, 3
   */
  public Trend trend(double... scores) {
    if (scores.length != groups()) {
      throw new IllegalArgumentException(scores.length + " scores for " + groups() + " groups");
    }
    double sum = 0;
    double variance = 0;
    double scale = 0;
    for (int i = 0; i < scores.length; i++) {
      sum += scores[i] * sums.score[i];
      for (int j = 0; j < scores.length; j++) {
        variance += scores[i] * scores[j] * sums.covariance[i][j];
        scale += Math.abs(scores[i] * scores[j] * sums.covariance[i][j]);
      }
    }
    boolean testable = variance > 1e-12 * scale;
    return testable ? Trend.of(sum / Math.sqrt(variance)) : Trend.NONE;
  }

  /**
   * Result of the test of a trend; both empty if nothing can be tested.
   *
   * @param z standard normal if all groups fail alike; above 0 if higher scores fail sooner
   * @param pValue two-sided
   */
  public record Trend(OptionalDouble z, OptionalDouble pValue) {
    static final Trend NONE = new Trend(OptionalDouble.empty(), OptionalDouble.empty());

    static Trend of(double z) {
      return new Trend(OptionalDouble.of(z), OptionalDouble.of(Quantile.normalTwoSidedP(z)));
    }
  }

  /**
   * Test of one pair of groups.
   *
   * @param first index of the one group
   * @param second index of the other
   * @param test their comparison alone
   * @param adjustedP its p value after Holm's adjustment for all pairs
   */
  public record Pair(int first, int second, LogRank test, OptionalDouble adjustedP) {}
}
