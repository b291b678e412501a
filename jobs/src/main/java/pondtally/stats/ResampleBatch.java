package pondtally.stats;

import java.util.Arrays;

/**
 * A few clusters that wait to be added to sums over all resamples. Added together, they take less
 * time: each sum is read and written once for all of them. Amounts must be whole numbers, and small
 * enough that a double holds their sum exactly (see {@link #LARGEST}): then it does not matter
 * which clusters wait together.
 */
public final class ResampleBatch {

  /** How many clusters wait together. */
  public static final int SIZE = 4;

  /**
   * The largest size of an amount for which {@link #SIZE} of them, weighed, add up exactly: a
   * weight is below 2⁵ (it is at most 20), and a double holds whole numbers up to 2⁵³.
   */
  public static final double LARGEST = 0x1p46;

  private final double[][] weights = new double[SIZE][];
  private int waiting;

  /**
   * Adds a cluster.
   *
   * @param ofResamples its weight in each resample; not changed while it waits
   * @return its place among those that wait, from 0
   */
  public int add(double[] ofResamples) {
    weights[waiting] = ofResamples;
    return waiting++;
  }

  /** Whether there is no place left. */
  public boolean isFull() {
    return waiting == SIZE;
  }

  /** Whether nobody waits. */
  public boolean isEmpty() {
    return waiting == 0;
  }

  /** Nobody waits any more. */
  public void clear() {
    for (int i = 0; i < waiting; i++) {
      weights[i] = null;
    }
    waiting = 0;
  }

  /**
   * Adds the waiting clusters to the sum of each resample.
   *
   * @param amounts of each cluster by its place
   */
  public void addTo(double[] sums, double[] amounts) {
    if (waiting < SIZE) {
      for (int i = 0; i < waiting; i++) {
        add(sums, weights[i], amounts[i]);
      }
    } else if (amounts[0] != 0 || amounts[1] != 0 || amounts[2] != 0 || amounts[3] != 0) {
      addAll(sums, amounts);
    }
  }

  /**
   * Adds the waiting clusters to the sum of each resample, which is kept as a whole number.
   *
   * @param scratch of the same length as {@code sums}; its content is lost
   */
  public void addTo(long[] sums, double[] amounts, double[] scratch) {
    boolean isSmall = true;
    boolean isAny = false;
    for (int i = 0; i < waiting; i++) {
      isSmall &= Math.abs(amounts[i]) <= LARGEST;
      isAny |= amounts[i] != 0;
    }
    if (!isSmall) {
      for (int i = 0; i < waiting; i++) {
        addWhole(sums, weights[i], (long) amounts[i]);
      }
    } else if (isAny) {
      Arrays.fill(scratch, 0);
      addTo(scratch, amounts);
      for (int r = 0; r < sums.length; r++) {
        sums[r] += (long) scratch[r];
      }
    }
  }

  private void addAll(double[] sums, double[] amounts) {
    double[] first = weights[0];
    double[] second = weights[1];
    double[] third = weights[2];
    double[] fourth = weights[3];
    double one = amounts[0];
    double two = amounts[1];
    double three = amounts[2];
    double four = amounts[3];
    for (int r = 0; r < sums.length; r++) {
      sums[r] += first[r] * one + second[r] * two + third[r] * three + fourth[r] * four;
    }
  }

  private static void add(double[] sums, double[] weights, double amount) {
    if (amount != 0) {
      for (int r = 0; r < sums.length; r++) {
        sums[r] += weights[r] * amount;
      }
    }
  }

  private static void addWhole(long[] sums, double[] weights, long amount) {
    for (int r = 0; r < sums.length; r++) {
      sums[r] += (long) weights[r] * amount;
    }
  }
}
