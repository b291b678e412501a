package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.Bootstrap;
import pondtally.stats.ExactSum;
import pondtally.stats.Limits;
import pondtally.stats.PoissonWeights;

/**
 * What one unit of outcome cost, by group, with the sums of every bootstrap resample of the
 * clusters. A cluster's weight in a resample depends on its name, the seed and the resample's
 * number alone, so that one pass over the data is enough and the answer is the same wherever it was
 * counted. Resampled sums are held in millionths, as whole numbers, so that their order does not
 * matter.
 */
public final class EffectTally implements Serializable {

  private static final long serialVersionUID = 1;
  private static final double MILLION = 1e6;
  private static final double LEVEL = 0.95;

  /** Groupings for which unit costs are worked out. */
  private static final Set<Grouping> GROUPINGS =
      EnumSet.of(
          Grouping.ALL,
          Grouping.PIPE,
          Grouping.KIND,
          Grouping.WATERSHED,
          Grouping.BUILD,
          Grouping.SETTING);

  private final AnalysisSettings settings;
  private final SortedMap<GroupKey, Map<Measure, Sums>> sums = new TreeMap<>();

  public EffectTally(AnalysisSettings settings) {
    this.settings = settings;
  }

  private static final class Sums implements Serializable {
    private static final long serialVersionUID = 1;
    private long clusters;
    private long leftOut;
    private final ExactSum cash = new ExactSum();
    private final ExactSum all = new ExactSum();
    private final ExactSum units = new ExactSum();
    private final double[] cashDraws;
    private final double[] allDraws;
    private final double[] unitDraws;

    Sums(int resamples) {
      cashDraws = new double[resamples];
      allDraws = new double[resamples];
      unitDraws = new double[resamples];
    }

    private void add(Effect effect, double denominator, double[] weights) {
      clusters++;
      cash.add(effect.cashUsd());
      all.add(effect.allUsd());
      units.add(denominator);
      addDraws(cashDraws, effect.cashUsd(), weights);
      addDraws(allDraws, effect.allUsd(), weights);
      addDraws(unitDraws, denominator, weights);
    }

    private static void addDraws(double[] draws, double amount, double[] weights) {
      double millionths = Math.rint(amount * MILLION);
      if (millionths == 0) {
        return;
      }
      for (int i = 0; i < draws.length; i++) {
        draws[i] += weights[i] * millionths;
      }
    }

    private void merge(Sums other) {
      clusters += other.clusters;
      leftOut += other.leftOut;
      cash.merge(other.cash);
      all.merge(other.all);
      units.merge(other.units);
      mergeDraws(cashDraws, other.cashDraws);
      mergeDraws(allDraws, other.allDraws);
      mergeDraws(unitDraws, other.unitDraws);
    }

    private static void mergeDraws(double[] draws, double[] more) {
      for (int i = 0; i < draws.length; i++) {
        draws[i] += more[i];
      }
    }
  }

  /** Adds a cluster; returns what it contributed, for {@link EffectInfluence}. */
  public List<EffectPart> add(ClusterView cluster) {
    List<EffectPart> parts = new ArrayList<>();
    double[] weights = weights(cluster.history().records().cluster());
    for (ClusterView.Subset subset : cluster.subsets()) {
      Effect effect = null;
      for (GroupKey key : subset.keys()) {
        if (GROUPINGS.contains(key.grouping())) {
          effect = effect == null ? Effect.of(cluster, subset.devices(), settings) : effect;
          parts.add(new EffectPart(key, effect));
          addEffect(key, effect, weights);
        }
      }
    }
    return parts;
  }

  private double[] weights(String cluster) {
    byte[] drawn = new byte[settings.resamples()];
    PoissonWeights.of(settings.seed(), cluster).fill(drawn);
    double[] weights = new double[drawn.length];
    for (int i = 0; i < drawn.length; i++) {
      weights[i] = drawn[i];
    }
    return weights;
  }

  private void addEffect(GroupKey key, Effect effect, double[] weights) {
    for (Measure measure : Measure.values()) {
      Sums s = sums(key, measure);
      Double denominator = measure.denominator(effect);
      if (!effect.costed() || denominator == null) {
        s.leftOut++;
      } else {
        s.add(effect, denominator, weights);
      }
    }
  }

  private Sums sums(GroupKey key, Measure measure) {
    return sums.computeIfAbsent(key, k -> new EnumMap<>(Measure.class))
        .computeIfAbsent(measure, m -> new Sums(settings.resamples()));
  }

  /** Adds what another tally summed. */
  public void merge(EffectTally other) {
    other.sums.forEach(
        (key, byMeasure) -> byMeasure.forEach((measure, more) -> sums(key, measure).merge(more)));
  }

  /** A measure of each cluster's influence on every unit cost, against the totals counted here. */
  public EffectInfluence influence() {
    EffectInfluence influence = new EffectInfluence();
    sums.forEach(
        (key, byMeasure) ->
            byMeasure.forEach(
                (measure, s) -> {
                  if (s.units.result() > 0) {
                    influence.expect(
                        key,
                        measure,
                        s.cash.result(),
                        s.all.result(),
                        s.units.result(),
                        s.clusters);
                  }
                }));
    return influence;
  }

  /** One row of the result table {@code cost_effectiveness}. */
  public record Row(
      String grouping,
      String group,
      String year,
      String measure,
      String basis,
      Double numeratorUsd,
      Double denominator,
      Double valueUsd,
      Double lower,
      Double upper,
      Integer resamples,
      Integer undefinedResamples,
      Long clusters,
      Long clustersLeftOut) {}

  /** The rows of the result table: each measure in cash alone, and with in-kind value. */
  public List<Row> rows(EffectInfluence influence) {
    List<Row> rows = new ArrayList<>();
    sums.forEach(
        (key, byMeasure) ->
            byMeasure.forEach(
                (measure, s) -> {
                  rows.add(
                      row(
                          key,
                          measure,
                          "cash",
                          s,
                          s.cash,
                          s.cashDraws,
                          influence.acceleration(key, measure, false)));
                  rows.add(
                      row(
                          key,
                          measure,
                          "cash-and-in-kind",
                          s,
                          s.all,
                          s.allDraws,
                          influence.acceleration(key, measure, true)));
                }));
    return rows;
  }

  private Row row(
      GroupKey key,
      Measure measure,
      String basis,
      Sums s,
      ExactSum numerator,
      double[] numerators,
      OptionalDouble acceleration) {
    boolean any = s.clusters > 0;
    double units = s.units.result();
    boolean defined = any && units > 0;
    double value = defined ? numerator.result() / units : Double.NaN;
    Bootstrap draws = Bootstrap.of(ratios(numerators, s.unitDraws), LEVEL);
    Limits limits =
        defined && acceleration.isPresent()
            ? draws.bca(value, acceleration.getAsDouble())
            : Limits.none();
    return new Row(
        key.grouping().code(),
        key.group(),
        Years.ALL,
        measure.code(),
        basis,
        any ? numerator.result() : null,
        any ? units : null,
        defined ? value : null,
        Cells.of(limits.lower()),
        Cells.of(limits.upper()),
        draws.resamples(),
        draws.undefined(),
        s.clusters,
        s.leftOut);
  }

  /** The ratio in each resample; NaN where nothing was drawn to divide by. */
  private static double[] ratios(double[] numerators, double[] denominators) {
    double[] ratios = new double[numerators.length];
    for (int i = 0; i < ratios.length; i++) {
      ratios[i] = denominators[i] > 0 ? numerators[i] / denominators[i] : Double.NaN;
    }
    return ratios;
  }
}
