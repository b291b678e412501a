package pondtally.analysis;

import java.io.Serializable;
import java.util.List;

/**
 * Everything that is counted over clusters: one tally a subject. Counting in parts and merging
 * gives the same as counting at once.
 */
public final class ProgramTally implements Serializable {

  private static final long serialVersionUID = 1;

  private final LifeTally lives;
  private final RateTally rates;
  private final CostTally costs;
  private final WetlandTally wetland;
  private final RemovalTally removals;
  private final PropertyTally properties;
  private final EffectTally effects;
  private final CompletenessTally completeness;
  private final FundingTally funding = new FundingTally();
  private final EstimatedTally estimated = new EstimatedTally();
  private final BenefitTally benefits;

  public ProgramTally(AnalysisSettings settings) {
    lives = new LifeTally(settings.rules().dating());
    rates = new RateTally(settings.fiscalYears());
    costs = new CostTally(settings);
    wetland = new WetlandTally(settings);
    removals = new RemovalTally(settings);
    properties = new PropertyTally(settings);
    effects = new EffectTally(settings);
    completeness = new CompletenessTally(settings);
    benefits = new BenefitTally(settings);
  }

  /** Counts a cluster; returns what it contributed to each unit cost. */
  public List<EffectPart> add(ClusterView cluster) {
    lives.add(cluster);
    rates.add(cluster);
    costs.add(cluster);
    wetland.add(cluster);
    removals.add(cluster);
    properties.add(cluster);
    completeness.add(cluster);
    funding.add(cluster);
    estimated.add(cluster);
    benefits.add(cluster);
    return effects.add(cluster);
  }

  /** Adds what another tally counted. */
  public void merge(ProgramTally other) {
    lives.merge(other.lives);
    rates.merge(other.rates);
    costs.merge(other.costs);
    wetland.merge(other.wetland);
    removals.merge(other.removals);
    properties.merge(other.properties);
    effects.merge(other.effects);
    completeness.merge(other.completeness);
    funding.merge(other.funding);
    estimated.merge(other.estimated);
    benefits.merge(other.benefits);
  }

  public LifeTally lives() {
    return lives;
  }

  public RateTally rates() {
    return rates;
  }

  public CostTally costs() {
    return costs;
  }

  public WetlandTally wetland() {
    return wetland;
  }

  public RemovalTally removals() {
    return removals;
  }

  public PropertyTally properties() {
    return properties;
  }

  public EffectTally effects() {
    return effects;
  }

  public CompletenessTally completeness() {
    return completeness;
  }

  public FundingTally funding() {
    return funding;
  }

  public EstimatedTally estimated() {
    return estimated;
  }

  public BenefitTally benefits() {
    return benefits;
  }
}
