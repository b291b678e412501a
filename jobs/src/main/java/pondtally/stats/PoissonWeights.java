package pondtally.stats;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * Bootstrap weights, one for each cluster and resample: independent Poisson counts with mean 1,
 * which stand for how often a cluster is drawn. Source: Poisson bootstrap, Hanley &amp; MacGibbon
 * 2006; Chamandy et al. 2012. A weight depends on seed, cluster and resample alone, so that it is
 * the same on any machine, in any order and in any split of the data.
 *
 * <p>Word r of a cluster's stream is the finalizer of SplitMix64 (Steele, Lea &amp; Flood 2014) at
 * start + r·golden ratio; the weight is the inverse of the Poisson distribution at that word, exact
 * to 2⁻⁶³. The start is a 64-bit hash of seed and cluster: that the streams of any two of a million
 * clusters overlap within 1,000 resamples has a chance below 10⁻⁴.
 */
public final class PoissonWeights {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final int TABLE_BITS = 12;
  private static final byte SEARCH = -1;
  private static final long[] BELOW = cumulative();
  private static final byte[] TABLE = table();

  private final long start;

  private PoissonWeights(long start) {
    this.start = start;
  }

  /** Weights of a cluster by its key, such as its smallest site id. */
  public static PoissonWeights of(long seed, String cluster) {
    long hash = mix(seed + GOLDEN);
    for (int i = 0; i < cluster.length(); i++) {
      hash = mix(hash + GOLDEN + cluster.charAt(i));
    }
    return new PoissonWeights(mix(hash ^ cluster.length()));
  }

  long start() {
    return start;
  }

  /** Weight in resample r, counted from 0. */
  public int weight(int resample) {
    return inverse(mix(start + (resample + 1L) * GOLDEN) >>> 1);
  }

  /** Writes the weights of resamples 0, 1, … into an array, as many as it has room for. */
  public void fill(byte[] weights) {
    long state = start;
    for (int r = 0; r < weights.length; r++) {
      state += GOLDEN;
      weights[r] = (byte) inverse(mix(state) >>> 1);
    }
  }

  /** As {@link #fill(byte[])}. */
  public void fill(double[] weights) {
    long state = start;
    for (int r = 0; r < weights.length; r++) {
      state += GOLDEN;
      weights[r] = inverse(mix(state) >>> 1);
    }
  }

  private static int inverse(long word) {
    int weight = TABLE[(int) (word >>> (63 - TABLE_BITS))];
    return weight != SEARCH ? weight : search(word);
  }

  private static int search(long word) {
    int weight = 0;
    while (weight < BELOW.length - 1 && word >= BELOW[weight]) {
      weight++;
    }
    return weight;
  }

  private static long mix(long z) {
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** P(X ≤ k)·2⁶³ for k = 0 to 20, rounded down; above 20 there are less than 2⁻⁶³. */
  private static long[] cumulative() {
    MathContext digits = new MathContext(60);
    BigDecimal e = BigDecimal.ZERO;
    BigDecimal term = BigDecimal.ONE;
    for (int k = 1; k < 60; k++) {
      e = e.add(term);
      term = term.divide(BigDecimal.valueOf(k), digits);
    }
    BigDecimal unit = new BigDecimal(BigInteger.ONE.shiftLeft(63)).divide(e, digits);
    long[] below = new long[21];
    BigDecimal sum = BigDecimal.ZERO;
    for (int k = 0; k < below.length; k++) {
      sum = sum.add(unit);
      below[k] = sum.toBigInteger().min(BigInteger.valueOf(Long.MAX_VALUE)).longValueExact();
      unit = unit.divide(BigDecimal.valueOf(k + 1L), digits);
    }
    return below;
  }

  /** The weight for each value of the leading bits, or SEARCH where they do not decide it. */
  private static byte[] table() {
    byte[] table = new byte[1 << TABLE_BITS];
    int rest = 63 - TABLE_BITS;
    for (int i = 0; i < table.length; i++) {
      int first = search((long) i << rest);
      int last = search(((long) i << rest) | ((1L << rest) - 1));
      table[i] = first == last ? (byte) first : SEARCH;
    }
    return table;
  }
}
