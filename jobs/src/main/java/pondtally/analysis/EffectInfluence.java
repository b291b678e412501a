package pondtally.analysis;

import java.io.Serializable;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.stats.JackknifeInfluence;

/**
 * How much each cluster moves each unit cost: the cost without it, from which the acceleration of
 * BCa limits follows (Efron 1987). Needs the totals first, so that it is a second pass over the
 * clusters' effects.
 */
public final class EffectInfluence implements Serializable {

  private static final long serialVersionUID = 1;

  private final Map<GroupKey, Map<Measure, Ratio>> ratios = new HashMap<>();

  /** Influence on one unit cost, in cash alone and with in-kind value. */
  private static final class Ratio implements Serializable {
    private static final long serialVersionUID = 1;
    private final double cashUsd;
    private final double allUsd;
    private final double units;
    private final JackknifeInfluence cash;
    private final JackknifeInfluence all;

    Ratio(double cashUsd, double allUsd, double units, long clusters) {
      this.cashUsd = cashUsd;
      this.allUsd = allUsd;
      this.units = units;
      cash = JackknifeInfluence.of(cashUsd / units, clusters);
      all = JackknifeInfluence.of(allUsd / units, clusters);
    }

    private void add(Effect effect, double denominator) {
      double rest = units - denominator;
      cash.add(rest > 0 ? (cashUsd - effect.cashUsd()) / rest : Double.NaN);
      all.add(rest > 0 ? (allUsd - effect.allUsd()) / rest : Double.NaN);
    }
  }

  /** Prepares to measure influence on a unit cost that has a positive denominator. */
  void expect(
      GroupKey key, Measure measure, double cashUsd, double allUsd, double units, long clusters) {
    ratios
        .computeIfAbsent(key, k -> new EnumMap<>(Measure.class))
        .put(measure, new Ratio(cashUsd, allUsd, units, clusters));
  }

  /** Adds what one cluster contributed to the unit costs of one group. */
  public void add(EffectPart part) {
    for (Measure measure : Measure.values()) {
      Ratio ratio = ratio(part.key(), measure);
      Double denominator = measure.denominator(part.effect());
      if (ratio != null && part.effect().costed() && denominator != null) {
        ratio.add(part.effect(), denominator);
      }
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
