package pondtally.analysis;

import java.io.Serializable;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.stats.JackknifeInfluence;

/**
 * How much each cluster moves each unit cost: the cost without it, from which the acceleration of
 * BCa limits follows (Efron 1987). Needs the totals first, so that it is a second pass over the
 * clusters' effects.
 */
public final class EffectInfluence implements Serializable {

  private static final long serialVersionUID = 1;

  private final SortedMap<GroupKey, Map<Measure, Ratio>> ratios = new TreeMap<>();

  /** Influence on one unit cost, in cash alone and with in-kind value. */
  private static final class Ratio implements Serializable {
    private static final long serialVersionUID = 1;
    private final EffectPart total;
    private final JackknifeInfluence cash;
    private final JackknifeInfluence all;

    Ratio(EffectPart total, long clusters) {
      this.total = total;
      cash = JackknifeInfluence.of(total.cashUsd() / total.units(), clusters);
      all = JackknifeInfluence.of(total.allUsd() / total.units(), clusters);
    }

    private void add(EffectPart part) {
      double units = total.units() - part.units();
      cash.add(units > 0 ? (total.cashUsd() - part.cashUsd()) / units : Double.NaN);
      all.add(units > 0 ? (total.allUsd() - part.allUsd()) / units : Double.NaN);
    }
  }

  /** Prepares to measure influence on a unit cost that has a positive denominator. */
  void expect(EffectPart total, long clusters) {
    ratios
        .computeIfAbsent(total.key(), k -> new EnumMap<>(Measure.class))
        .put(total.measure(), new Ratio(total, clusters));
  }

  /** Adds what one cluster contributed. */
  public void add(EffectPart part) {
    Ratio ratio = ratio(part.key(), part.measure());
    if (ratio != null) {
      ratio.add(part);
    }
  }

  /** Adds what another has measured against the same totals. */
  public void merge(EffectInfluence other) {
    other.ratios.forEach(
        (key, byMeasure) ->
            byMeasure.forEach(
                (measure, more) -> {
                  Ratio ratio = ratio(key, measure);
                  ratio.cash.merge(more.cash);
                  ratio.all.merge(more.all);
                }));
  }

  /** Acceleration of the limits of one unit cost; empty where it cannot be worked out. */
  OptionalDouble acceleration(GroupKey key, Measure measure, boolean withInKind) {
    Ratio ratio = ratio(key, measure);
    if (ratio == null) {
      return OptionalDouble.empty();
    }
    return (withInKind ? ratio.all : ratio.cash).acceleration();
  }

  private Ratio ratio(GroupKey key, Measure measure) {
    Map<Measure, Ratio> byMeasure = ratios.get(key);
    return byMeasure == null ? null : byMeasure.get(measure);
  }
}
