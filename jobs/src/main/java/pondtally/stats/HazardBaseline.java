package pondtally.stats;

import java.util.Arrays;

/**
 * Baseline cumulative hazard of one stratum: Λ0(t) = Σ d/Σθ over failure days up to t (Breslow
 * 1974), or Efron's form of it, for covariates that are all 0 (reference levels; numbers 0). No
 * unit; a device with covariates x survives to t with probability exp(−Λ0(t) exp(xβ)).
 */
public final class HazardBaseline {
  private final double[] days;
  private final double[] cumulative;

  HazardBaseline(double[] days, double[] increments) {
    this.days = days;
    cumulative = increments;
    for (int k = 1; k < increments.length; k++) {
      cumulative[k] += cumulative[k - 1];
    }
  }

  /** Failure days in order. */
  public double[] days() {
    return days.clone();
  }

  /** Cumulative hazard up to and on an age in days. */
  public double at(double age) {
    int found = Arrays.binarySearch(days, age);
    int last = found >= 0 ? found : -found - 2;
    return last < 0 ? 0 : cumulative[last];
  }
}
