package pondtally.stats;

import java.io.Serializable;
import java.util.OptionalDouble;

/**
 * Acceleration a of BCa limits from leaving out one cluster at a time: a = Σ L³ / (6 (Σ L²)^1.5)
 * with L = (n − 1)(θ̄ − θ₍ᵢ₎), θ₍ᵢ₎ the estimate without cluster i and θ̄ their mean. No unit.
 * Source: Efron 1987; jackknife influence values as in Davison &amp; Hinkley 1997, section 5.3.
 *
 * <p>Mergeable, and the same to the last bit in any order: only power sums of (n − 1)(θ − θ₍ᵢ₎)/|θ|
 * are kept, as {@link ExactSum}.
 */
public final class JackknifeInfluence implements Serializable {
  private static final long serialVersionUID = 1;
  private static final double LARGEST = 0x1p21;

  private final double estimate;
  private final double scale;
  private final long clusters;
  private long added;
  private long undefined;
  private final ExactSum first = new ExactSum();
  private final ExactSum second = new ExactSum();
  private final ExactSum third = new ExactSum();

  private JackknifeInfluence(double estimate, long clusters) {
    this.estimate = estimate;
    this.clusters = clusters;
    this.scale = (clusters - 1) / (estimate == 0 ? 1 : Math.abs(estimate));
  }

  /**
   * Nothing left out yet.
   *
   * @param estimate θ of all clusters, finite
   * @param clusters n, how many there are in all; at least 1
   */
  public static JackknifeInfluence of(double estimate, long clusters) {
    if (!(Math.abs(estimate) < Double.POSITIVE_INFINITY) || clusters < 1) {
      throw new IllegalArgumentException("estimate " + estimate + " of " + clusters + " clusters");
    }
    return new JackknifeInfluence(estimate, clusters);
  }

  /**
   * Adds the estimate without one cluster. One that is NaN, infinite or out of all proportion to θ
   * (influence of 2²¹ or more) makes the acceleration undefined. Returns this.
   */
  public JackknifeInfluence add(double estimateWithout) {
    double influence = scale * (estimate - estimateWithout);
    if (!(Math.abs(influence) < LARGEST)) {
      undefined++;
    } else {
      added++;
      first.add(influence);
      second.add(influence * influence);
      third.add(influence * influence * influence);
    }
    return this;
  }

  /** Adds what another has counted for the same estimate. Returns this. */
  public JackknifeInfluence merge(JackknifeInfluence other) {
    if (other.estimate != estimate || other.clusters != clusters) {
      throw new IllegalArgumentException("influence on another estimate cannot be merged");
    }
    added += other.added;
    undefined += other.undefined;
    first.merge(other.first);
    second.merge(other.second);
    third.merge(other.third);
    return this;
  }

  /**
   * a; empty with fewer than two clusters, where the estimate without one of them is undefined, or
   * where leaving any one out changes nothing.
   */
  public OptionalDouble acceleration() {
    if (added < 2 || undefined > 0) {
      return OptionalDouble.empty();
    }
    double mean = first.result() / added;
    double squares = second.result() - added * mean * mean;
    double cubes = third.result() - 3 * mean * second.result() + 2 * added * mean * mean * mean;
    return squares > 1e-12 * second.result() && squares > 0
        ? OptionalDouble.of(cubes / (6 * Math.pow(squares, 1.5)))
        : OptionalDouble.empty();
  }
}
