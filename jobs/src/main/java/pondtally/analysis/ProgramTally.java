package pondtally.analysis;

import java.io.Serializable;
import java.util.List;
import pondtally.history.FailureDating;

/**
 * Everything that is counted over clusters: one tally a subject. Counting in parts and merging
 * gives the same as counting at once.
 */
public final class ProgramTally implements Serializable {

  private static final long serialVersionUID = 1;

  private final LifeTally lives;
  private final HazardTally hazards = new HazardTally();
  private final RepeatTally repeats = new RepeatTally();
  private final FailureDating dating;
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
  private final RequestTally requests;
  private final BuyingTally buying = new BuyingTally();

  public ProgramTally(AnalysisSettings settings) {
    dating = settings.rules().dating();
    lives = new LifeTally(dating);
    rates = new RateTally(settings.fiscalYears());
    costs = new CostTally(settings);
    wetland = new WetlandTally(settings);
    removals = new RemovalTally(settings);
    properties = new PropertyTally(settings);
    effects = new EffectTally(settings);
    completeness = new CompletenessTally(settings);
    benefits = new BenefitTally(settings);
    requests = new RequestTally(settings);
  }

  /** Counts a cluster; returns what it contributed, for the second pass. */
  public ClusterPart add(ClusterView cluster) {
    List<LifePart> parts = LifePart.of(cluster, dating);
    List<RepeatPart> devices = RepeatPart.of(cluster, dating);
    hazards.add(parts);
    repeats.add(devices);
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
    requests.add(cluster);
    buying.add(cluster);
    return new ClusterPart(
        cluster.history().records().cluster(), effects.add(cluster), parts, devices);
  }

  /** Adds what another tally counted. */
  public void merge(ProgramTally other) {
    lives.merge(other.lives);
    hazards.merge(other.hazards);
    repeats.merge(other.repeats);
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
    requests.merge(other.requests);
    buying.merge(other.buying);
  }

  public LifeTally lives() {
    return lives;
  }

  HazardTally hazards() {
    return hazards;
  }

  public RepeatTally repeats() {
    return repeats;
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

  public RequestTally requests() {
    return requests;
  }

  public BuyingTally buying() {
    return buying;
  }
}
