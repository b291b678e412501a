package pondtally.analysis;

import java.io.Serializable;

/**
 * What is found by weighing each cluster against the totals of all: the influence of clusters on
 * unit costs, and errors that allow for likeness within a cluster.
 */
public final class SecondPass implements Serializable {

  private static final long serialVersionUID = 1;

  private final EffectInfluence effects;
  private final RepeatSpreads repeats;
  private final HazardSpreads hazards;
  private final IntervalSpreads intervals;

  private SecondPass(ProgramTally totals, FittedModels models) {
    effects = totals.effects().influence();
    repeats = RepeatSpreads.of(totals.repeats());
    hazards = models.hazards().spreads();
    intervals = models.intervals().spreads();
  }

  /** Prepares to weigh clusters against these totals. */
  public static SecondPass of(ProgramTally totals, FittedModels models) {
    return new SecondPass(totals, models);
  }

  /** Weighs a cluster. */
  public void add(ClusterPart cluster) {
    cluster.effects().forEach(effects::add);
    repeats.add(cluster.devices());
    hazards.add(cluster.lives());
    intervals.add(cluster.cluster(), cluster.lives());
  }

  /** Adds the clusters that another has weighed against the same totals. */
  public SecondPass merge(SecondPass other) {
    effects.merge(other.effects);
    repeats.merge(other.repeats);
    hazards.merge(other.hazards);
    intervals.merge(other.intervals);
    return this;
  }

  /** Influence of clusters on unit costs. */
  public EffectInfluence effects() {
    return effects;
  }

  RepeatSpreads repeats() {
    return repeats;
  }

  HazardSpreads hazards() {
    return hazards;
  }

  IntervalSpreads intervals() {
    return intervals;
  }
}
