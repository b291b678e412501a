package pondtally.analysis;

import java.util.function.Consumer;

/**
 * The rows behind every additive figure of a cluster: what the tallies add up, one by one. Amounts
 * that rest on time (working days, acre-years) name the row of the device, the pond's last
 * measurement or the property; the visits between are in the partner's own lists.
 */
public final class ContributionRows {

  private ContributionRows() {}

  /** Hands over all contributions of a cluster, in no particular order. */
  public static void of(
      ClusterView cluster, AnalysisSettings settings, Consumer<Contribution> into) {
    ContributionSink sink = new ContributionSink(into);
    new ContributionCosts(cluster, settings, sink).add();
    new ContributionTimes(cluster, settings, sink).add();
    new ContributionPlaces(cluster, settings, sink).add();
  }
}
