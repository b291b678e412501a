package pondtally.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Adjusts p values of m tests made together so that the chance of any false finding stays below the
 * level: in increasing order, p(i)·(m − i + 1), at least the one before it, at most 1. Source: Holm
 * 1979. Valid whatever the dependence between the tests.
 */
public final class Holm {
  private Holm() {}

  /** Adjusted p values, in the order given; each p from 0 to 1. */
  public static double[] adjust(double... p) {
    for (double one : p) {
      if (!(one >= 0 && one <= 1)) {
        throw new IllegalArgumentException("p value " + one + ", expected 0 to 1");
      }
    }
    int[] order =
        IntStream.range(0, p.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> p[i]))
            .mapToInt(i -> i)
            .toArray();
    double[] adjusted = new double[p.length];
    double largest = 0;
    for (int rank = 0; rank < order.length; rank++) {
      largest = Math.max(largest, Math.min(1, p[order[rank]] * (p.length - rank)));
      adjusted[order[rank]] = largest;
    }
    return adjusted;
  }

  /** As the other; tests without a p value keep none and are not counted. */
  public static List<OptionalDouble> adjust(List<OptionalDouble> p) {
    double[] known =
        adjust(
            p.stream()
                .flatMapToDouble(
                    o -> o.isPresent() ? DoubleStream.of(o.getAsDouble()) : DoubleStream.empty())
                .toArray());
    List<OptionalDouble> adjusted = new ArrayList<>();
    int next = 0;
    for (OptionalDouble one : p) {
      adjusted.add(one.isPresent() ? OptionalDouble.of(known[next++]) : one);
    }
    return adjusted;
  }
}
