package pondtally.stage;

import java.util.Iterator;
import java.util.List;
import org.apache.spark.api.java.JavaRDD;
import pondtally.analysis.AnalysisSettings;
import pondtally.analysis.ClusterView;
import pondtally.analysis.CostRules;
import pondtally.analysis.DeviceRow;
import pondtally.analysis.Groups;
import pondtally.analysis.Prices;
import pondtally.analysis.ProgramTally;
import pondtally.analysis.SiteRow;
import pondtally.check.CheckSettings;
import pondtally.check.CheckedCluster;
import pondtally.check.ClusterChecks;
import pondtally.history.ClusterHistory;
import pondtally.history.Histories;
import pondtally.record.ClusterRecords;

/**
 * Checks the rows of each cluster against each other, makes its histories and counts them, in one
 * pass.
 */
public final class OutcomeStage {

  private OutcomeStage() {}

  /** What all the clusters add up to. */
  static ClusterOutcome run(
      JavaRDD<ClusterRecords> clusters,
      CheckSettings checks,
      AnalysisSettings settings,
      Prices prices) {
    return clusters
        .mapPartitions(part -> List.of(count(part, checks, settings, prices)).iterator())
        .reduce(ClusterOutcome::merge);
  }

  private static ClusterOutcome count(
      Iterator<ClusterRecords> clusters,
      CheckSettings checks,
      AnalysisSettings settings,
      Prices prices) {
    ClusterOutcome outcome = new ClusterOutcome(new ProgramTally(settings));
    Groups groups = new Groups(settings.watershedDigits());
    CostRules costs = new CostRules(prices, settings.laborRateUsd(), settings.volunteerRateUsd());
    while (clusters.hasNext()) {
      CheckedCluster checked = ClusterChecks.check(clusters.next(), checks);
      outcome.findings().addAll(checked.findings());
      outcome.verdicts().addAll(checked.verdicts());
      ClusterHistory history = Histories.of(checked.kept(), settings.rules());
      ClusterView view = new ClusterView(history, groups, costs);
      outcome.tally().add(view);
      outcome.devices().addAll(DeviceRow.of(view, settings));
      outcome.sites().addAll(SiteRow.of(view, settings));
    }
    return outcome;
  }
}
