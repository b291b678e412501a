package pondtally.stats;

/**
 * Exact limits of a proportion x/n: the shares at which x or more, and x or fewer, have probability
 * α/2; quantiles of beta distributions. Source: Clopper &amp; Pearson 1934. Coverage is at least
 * the level. Assumes independent units.
 */
public final class ClopperPearson {
  private ClopperPearson() {}

  /** Limits of x of n at a level such as 0.95; none if n is 0. */
  public static Limits limits(long x, long n, double level) {
    check(x, n);
    double tail = (1 - Quantile.checkLevel(level)) / 2;
    if (n == 0) {
      return Limits.none();
    }
    double lower = x == 0 ? 0 : Quantile.beta(tail, x, n - x + 1.0);
    double upper = x == n ? 1 : Quantile.beta(1 - tail, x + 1.0, n - x);
    return Limits.of(lower, upper);
  }

  static void check(long x, long n) {
    if (x < 0 || n < x) {
      throw new IllegalArgumentException(x + " of " + n + " is not a proportion");
    }
  }
}
