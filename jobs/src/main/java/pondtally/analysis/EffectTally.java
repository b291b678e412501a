package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
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
import pondtally.stats.ExactSum;
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
  private final Map<GroupKey, GroupSums> sums = new HashMap<>();

  public EffectTally(AnalysisSettings settings) {
    this.settings = settings;
  }

  /**
   * One group's sums. What was paid is resampled once for all the measures that a cluster counts
   * in, by the set of those measures.
   */
  private static final class GroupSums implements Serializable {
    private static final long serialVersionUID = 1;
    private final Sums[] byMeasure = new Sums[Measure.ALL.size()];
    private final Map<Integer, Paid> paid = new HashMap<>();
    private final int resamples;

    GroupSums(int resamples) {
      this.resamples = resamples;
      Arrays.setAll(byMeasure, m -> new Sums(resamples));
    }

    private void add(Effect effect, double[] weights) {
      int counted = 0;
      for (Measure measure : Measure.ALL) {
        Sums s = byMeasure[measure.ordinal()];
        Double denominator = measure.denominator(effect);
        if (!effect.costed() || denominator == null) {
          s.leftOut++;
        } else {
          s.add(effect, denominator, weights);
          counted |= 1 << measure.ordinal();
        }
      }
      if (counted != 0) {
        paid(counted).add(effect, weights);
      }
    }

    private Paid paid(int measures) {
      return paid.computeIfAbsent(measures, m -> new Paid(resamples));
    }

    private void merge(GroupSums other) {
      for (int m = 0; m < byMeasure.length; m++) {
        byMeasure[m].merge(other.byMeasure[m]);
      }
      other.paid.forEach((measures, more) -> paid(measures).merge(more));
    }

    /** What was paid in each resample by the clusters that count in a measure. */
    private double[] paid(Measure measure, boolean inKindToo) {
      double[] sum = new double[resamples];
      paid.forEach(
          (measures, own) -> {
            if ((measures & 1 << measure.ordinal()) != 0) {
              mergeDraws(sum, own.cash);
              if (inKindToo) {
                mergeDraws(sum, own.inKind);
              }
            }
          });
      return sum;
    }
  }

  /** Resampled dollars, in millionths. */
  private static final class Paid implements Serializable {
    private static final long serialVersionUID = 1;
    private final double[] cash;
    private final double[] inKind;

    Paid(int resamples) {
      cash = new double[resamples];
      inKind = new double[resamples];
    }

    private void add(Effect effect, double[] weights) {
      double paid = millionths(effect.cashUsd());
      addDraws(cash, paid, weights);
      addDraws(inKind, millionths(effect.allUsd()) - paid, weights);
    }

    private void merge(Paid other) {
      mergeDraws(cash, other.cash);
      mergeDraws(inKind, other.inKind);
    }
  }

  private static final class Sums implements Serializable {
    private static final long serialVersionUID = 1;
    private long clusters;
    private long leftOut;
    private final ExactSum cash = new ExactSum();
    private final ExactSum all = new ExactSum();
    private final ExactSum units = new ExactSum();
    private final double[] unitDraws;

    Sums(int resamples) {
      unitDraws = new double[resamples];
    }

    private void add(Effect effect, double denominator, double[] weights) {
      clusters++;
      cash.add(effect.cashUsd());
      all.add(effect.allUsd());
      units.add(denominator);
      addDraws(unitDraws, millionths(denominator), weights);
    }

    private void merge(Sums other) {
      clusters += other.clusters;
      leftOut += other.leftOut;
      cash.merge(other.cash);
      all.merge(other.all);
      units.merge(other.units);
      mergeDraws(unitDraws, other.unitDraws);
    }
  }

  private static double millionths(double amount) {
    return Math.rint(amount * MILLION);
  }

  private static void addDraws(double[] draws, double millionths, double[] weights) {
    if (millionths == 0) {
      return;
    }
    for (int i = 0; i < draws.length; i++) {
      draws[i] += weights[i] * millionths;
    }
  }

  private static void mergeDraws(double[] draws, double[] more) {
    for (int i = 0; i < draws.length; i++) {
      draws[i] += more[i];
    }
  }

  /** Adds a cluster; returns what it contributed, for {@link EffectInfluence}. */
  public List<EffectPart> add(ClusterView cluster) {
    byte[] drawn = cluster.weights(settings.seed(), settings.resamples());
    double[] weights = new double[drawn.length];
    for (int i = 0; i < weights.length; i++) {
      weights[i] = drawn[i];
    }
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

  private GroupSums sums(GroupKey key) {
    return sums.computeIfAbsent(key, k -> new GroupSums(settings.resamples()));
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
            Sums s = group.byMeasure[measure.ordinal()];
            if (s.units.result() > 0) {
              influence.expect(
                  key, measure, s.cash.result(), s.all.result(), s.units.result(), s.clusters);
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
      GroupSums group,
      EffectInfluence influence,
      boolean inKindToo) {
    Sums s = group.byMeasure[measure.ordinal()];
    ExactSum numerator = inKindToo ? s.all : s.cash;
    OptionalDouble acceleration = influence.acceleration(key, measure, inKindToo);
    boolean any = s.clusters > 0;
    double units = s.units.result();
    boolean defined = any && units > 0;
    double value = defined ? numerator.result() / units : Double.NaN;
    Bootstrap draws =
        Bootstrap.expanded(ratios(group.paid(measure, inKindToo), s.unitDraws), LEVEL, s.clusters);
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
