package pondtally.sample;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Random draws that depend on the seed and a name only, so that one more device changes no other.
 * Generator: SplitMix64 (Steele, Lea & Flood 2014); StrictMath, so that every machine draws the
 * same.
 */
final class Draw {
  private long state;

  private Draw(long state) {
    this.state = state;
  }

  static Draw of(String... name) {
    long hash = 0xcbf29ce484222325L;
    for (char c : String.join("/", name).toCharArray()) {
      hash = (hash ^ c) * 0x100000001b3L;
    }
    return new Draw(SampleTruth.SEED * 31 + hash);
  }

  private long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** Uniform on (0, 1). */
  double unit() {
    return ((next() >>> 11) + 0.5) / (1L << 53);
  }

  boolean chance(double probability) {
    return unit() < probability;
  }

  /** A whole number, both ends included. */
  int between(int low, int high) {
    return low + (int) StrictMath.floor(unit() * (high - low + 1));
  }

  double uniform(double low, double high) {
    return low + unit() * (high - low);
  }

  double exponential(double ratePerUnit) {
    return -StrictMath.log(unit()) / ratePerUnit;
  }

  double lognormal(double median, double logSd) {
    double normal =
        StrictMath.sqrt(-2 * StrictMath.log(unit())) * StrictMath.cos(2 * StrictMath.PI * unit());
    return median * StrictMath.exp(logSd * normal);
  }

  int poisson(double mean) {
    double limit = StrictMath.exp(-mean);
    int count = 0;
    for (double product = unit(); product > limit; product *= unit()) {
      count++;
    }
    return count;
  }

  /** Age at failure of a Weibull life known to have reached {@code age}, its hazard multiplied. */
  double failureAge(SampleTruth.Pipe pipe, double hazard, double age) {
    double reached = StrictMath.pow(age / pipe.scaleDays, pipe.shape);
    double total = reached + exponential(1.0) / hazard;
    return pipe.scaleDays * StrictMath.pow(total, 1 / pipe.shape);
  }

  <T> T pick(List<T> options) {
    return options.get(between(0, options.size() - 1));
  }

  /** One key, by its weight; keys are taken in alphabetical order. */
  String weighted(Map<String, Double> weights) {
    double total = new TreeMap<>(weights).values().stream().mapToDouble(Double::doubleValue).sum();
    double left = unit() * total;
    String last = "";
    for (Map.Entry<String, Double> entry : new TreeMap<>(weights).entrySet()) {
      last = entry.getKey();
      left -= entry.getValue();
      if (left < 0) {
        return last;
      }
    }
    return last;
  }

  /** An index, by its weight. */
  int weighted(double... weights) {
    double total = 0;
    for (double weight : weights) {
      total += weight;
    }
    double left = unit() * total;
    for (int i = 0; i < weights.length; i++) {
      left -= weights[i];
      if (left < 0) {
        return i;
      }
    }
    return weights.length - 1;
  }
}
