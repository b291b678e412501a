package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.record.Removal;
import pondtally.stats.Bootstrap;
import pondtally.stats.Limits;

/**
 * What one unit of outcome cost, by group, with the sums of every bootstrap resample of the
 * clusters. A cluster's weight in a resample depends on its name, the seed and the resample's
 * number alone, so that one pass over the data is enough and the answer is the same wherever it was
 * counted. Resampled sums are held in millionths, as whole numbers, so that their order does not
 * matter.
 */
public final class EffectTally implements Serializable {

  private static final long serialVersionUID = 1;
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
  private final Map<GroupKey, EffectSums> sums = new HashMap<>();

  public EffectTally(AnalysisSettings settings) {
    this.settings = settings;
  }

  /** Adds a cluster; returns what it contributed, for {@link EffectInfluence}. */
  public List<EffectPart> add(ClusterView cluster) {
    double[] weights = cluster.weights(settings.seed(), settings.resamples());
    Map<String, Map<Integer, Removal>> reports = RemovalTally.reports(cluster);
    List<EffectPart> parts = new ArrayList<>();
    for (ClusterView.Subset subset : cluster.subsets()) {
      Effect effect = null;
      for (GroupKey key : subset.keys()) {
        if (GROUPINGS.contains(key.grouping())) {
          effect =
              effect == null ? Effect.of(cluster, subset.devices(), reports, settings) : effect;
          parts.add(new EffectPart(key, effect));
          sums(key).add(effect, weights);
        }
      }
    }
    return parts;
  }

  private EffectSums sums(GroupKey key) {
    return sums.computeIfAbsent(key, k -> new EffectSums(settings.resamples()));
  }

  /** Adds what another tally summed. */
  public void merge(EffectTally other) {
    other.sums.forEach((key, more) -> sums(key).merge(more));
  }

  /** A measure of each cluster's influence on every unit cost, against the totals counted here. */
  public EffectInfluence influence() {
    EffectInfluence influence = new EffectInfluence();
    sums.forEach(
        (key, group) -> {
          for (Measure measure : Measure.ALL) {
            EffectSums.OfMeasure s = group.of(measure);
            if (s.units() > 0) {
              influence.expect(key, measure, s.cash(), s.all(), s.units(), s.clusters());
            }
          }
        });
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
    new TreeMap<>(sums)
        .forEach(
            (key, group) -> {
              for (Measure measure : Measure.ALL) {
                rows.add(row(key, measure, group, influence, false));
                rows.add(row(key, measure, group, influence, true));
              }
            });
    return rows;
  }

  private static Row row(
      GroupKey key,
      Measure measure,
      EffectSums group,
      EffectInfluence influence,
      boolean inKindToo) {
    EffectSums.OfMeasure s = group.of(measure);
    double numerator = inKindToo ? s.all() : s.cash();
    OptionalDouble acceleration = influence.acceleration(key, measure, inKindToo);
    boolean any = s.clusters() > 0;
    double units = s.units();
    boolean defined = any && units > 0;
    double value = defined ? numerator / units : Double.NaN;
    Bootstrap draws =
        Bootstrap.expanded(
            ratios(group.paid(measure, inKindToo), s.unitDraws()), LEVEL, s.clusters());
    Limits limits =
        defined && acceleration.isPresent()
            ? draws.bca(value, acceleration.getAsDouble())
            : Limits.none();
    return new Row(
        key.grouping().code(),
        key.group(),
        Years.ALL,
        measure.code(),
        inKindToo ? "cash-and-in-kind" : "cash",
        any ? numerator : null,
        any ? units : null,
        defined ? value : null,
        Cells.of(limits.lower()),
        Cells.of(limits.upper()),
        draws.resamples(),
        draws.undefined(),
        s.clusters(),
        s.leftOut());
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
