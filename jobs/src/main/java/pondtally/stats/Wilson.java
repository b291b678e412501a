package pondtally.stats;

/**
 * Score limits of a proportion x/n: (x + z²/2 ± z·√(x(n−x)/n + z²/4)) / (n + z²). Source: Wilson
 * 1927; recommended by Newcombe 1998. Coverage is near the level on average, not at least the
 * level; see {@link ClopperPearson} for that. Assumes independent units.
 */
public final class Wilson {
  private Wilson() {}

  /** Limits of x of n at a level such as 0.95; none if n is 0. */
  public static Limits limits(long x, long n, double level) {
    ClopperPearson.check(x, n);
    double z = Quantile.twoSided(level);
    if (n == 0) {
      return Limits.none();
    }
    double middle = x + z * z / 2;
    double spread = z * Math.sqrt((double) x * (n - x) / n + z * z / 4);
    double lower = x == 0 ? 0 : (middle - spread) / (n + z * z);
    double upper = x == n ? 1 : (middle + spread) / (n + z * z);
    return Limits.of(lower, upper);
  }
}
