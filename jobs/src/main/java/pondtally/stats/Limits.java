package pondtally.stats;

import java.util.OptionalDouble;

/**
 * Lower and upper confidence limit of an estimate, in the estimate's own unit. A side that cannot
 * be computed, or that has no bound within the data, is empty: never 0, NaN or infinity.
 */
public record Limits(OptionalDouble lower, OptionalDouble upper) {
  private static final Limits NONE = new Limits(OptionalDouble.empty(), OptionalDouble.empty());

  /**
   * Both limits known. Throws IllegalArgumentException unless lower ≤ upper and both are finite.
   */
  public static Limits of(double lower, double upper) {
    if (!(lower <= upper) || Double.isInfinite(lower) || Double.isInfinite(upper)) {
      throw new IllegalArgumentException("limits " + lower + " to " + upper + " are not in order");
    }
    return new Limits(OptionalDouble.of(lower), OptionalDouble.of(upper));
  }

  /** Neither limit can be computed. */
  public static Limits none() {
    return NONE;
  }

  /** Whether both limits are known. */
  public boolean known() {
    return lower.isPresent() && upper.isPresent();
  }

  /** The same limits in another unit: each multiplied by a factor above 0. */
  public Limits times(double factor) {
    return new Limits(times(lower, factor), times(upper, factor));
  }

  private static OptionalDouble times(OptionalDouble side, double factor) {
    return side.isPresent() ? OptionalDouble.of(side.getAsDouble() * factor) : side;
  }
}
