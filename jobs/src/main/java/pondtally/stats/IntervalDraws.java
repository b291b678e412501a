package pondtally.stats;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.OptionalInt;

/**
 * Weights of the follow-ups of an {@link IntervalEstimate} in bootstrap resamples of clusters of
 * lives: each life counts as often as its cluster was drawn. Whole numbers, so parts merge in any
 * order to the same weights.
 */
public final class IntervalDraws implements Serializable {
  private static final long serialVersionUID = 1L;

  private final ArrayList<IntervalCounts.Row> rows;
  private final int roundedToDays;
  private final int[][] weights;

  private IntervalDraws(IntervalEstimate estimate, int roundedToDays, int resamples) {
    rows = new ArrayList<>(estimate.rows());
    this.roundedToDays = roundedToDays;
    weights = new int[resamples][rows.size()];
  }

  /** No lives yet, for the follow-ups of an estimate. */
  public static IntervalDraws of(IntervalEstimate estimate, int resamples) {
    return new IntervalDraws(estimate, estimate.roundedToDays(), resamples);
  }

  /**
   * The same for an estimate of counts that were rounded outward beforehand; lives are added as
   * they were before it.
   */
  public static IntervalDraws ofRounded(
      IntervalEstimate estimate, int roundedToDays, int resamples) {
    if (estimate.roundedToDays() != 0) {
      throw new IllegalArgumentException("an estimate that was rounded twice");
    }
    return new IntervalDraws(estimate, roundedToDays, resamples);
  }

  /**
   * Adds a life. Returns this.
   *
   * @param drawn how often its cluster was drawn in each resample
   * @throws IllegalArgumentException for a follow-up that the estimate did not see
   */
  public IntervalDraws add(double entryDays, double leftDays, double rightDays, byte[] drawn) {
    int row = rowOf(entryDays, leftDays, rightDays).orElse(-1);
    if (row < 0 || drawn.length != weights.length) {
      throw new IllegalArgumentException(
          "follow-up ("
              + entryDays
              + ", "
              + leftDays
              + ", "
              + rightDays
              + ") was not in the estimate, or "
              + drawn.length
              + " resamples are not the "
              + weights.length
              + " expected");
    }
    for (int r = 0; r < drawn.length; r++) {
      weights[r][row] += drawn[r];
    }
    return this;
  }

  private OptionalInt rowOf(double entryDays, double leftDays, double rightDays) {
    IntervalCounts.Row key = IntervalCounts.outward(entryDays, leftDays, rightDays, roundedToDays);
    int at = Collections.binarySearch(rows, key, IntervalCounts.Row.ORDER);
    return at >= 0 ? OptionalInt.of(at) : OptionalInt.empty();
  }

  /** Adds the lives of another for the same estimate. Returns this. */
  public IntervalDraws merge(IntervalDraws other) {
    for (int r = 0; r < weights.length; r++) {
      for (int row = 0; row < weights[r].length; row++) {
        weights[r][row] += other.weights[r][row];
      }
    }
    return this;
  }

  /** Number of resamples. */
  public int resamples() {
    return weights.length;
  }

  /** Weights of one resample, in the order of {@link IntervalEstimate#rows}. */
  public double[] weights(int resample) {
    double[] row = new double[rows.size()];
    for (int i = 0; i < row.length; i++) {
      row[i] = weights[resample][i];
    }
    return row;
  }
}
