package pondtally.stage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.lang3.SerializationUtils;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.storage.StorageLevel;
import pondtally.analysis.AnalysisSettings;
import pondtally.analysis.ClusterPart;
import pondtally.analysis.ClusterView;
import pondtally.analysis.CostRules;
import pondtally.analysis.DeviceRow;
import pondtally.analysis.FittedModels;
import pondtally.analysis.Groups;
import pondtally.analysis.Prices;
import pondtally.analysis.ProgramTally;
import pondtally.analysis.Scope;
import pondtally.analysis.SecondPass;
import pondtally.analysis.SiteRow;
import pondtally.analysis.WorklistDevice;
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

  /**
   * What the clusters of one part of the data add up to, and what each contributed; packed, because
   * both are kept for the second pass.
   */
  private record Part(byte[] outcome, byte[] clusters) implements Serializable {}

  /**
   * What all the clusters add up to: a pass that counts, and one that weighs each cluster against
   * the totals.
   */
  static ClusterOutcome run(
      JavaRDD<ClusterRecords> clusters,
      CheckSettings checks,
      AnalysisSettings settings,
      Prices prices,
      Scope scope) {
    JavaRDD<Part> parts =
        clusters
            .coalesce(clusters.context().defaultParallelism())
            .mapPartitions(part -> List.of(count(part, checks, settings, prices, scope)).iterator())
            .persist(StorageLevel.MEMORY_AND_DISK());
    ClusterOutcome outcome =
        parts.map(Part::outcome).collect().stream()
            .map(packed -> (ClusterOutcome) SerializationUtils.deserialize(packed))
            .reduce(ClusterOutcome::merge)
            .orElseThrow();
    FittedModels models = FittedModels.of(outcome.tally(), settings);
    SecondPass totals = SecondPass.of(outcome.tally(), models);
    SecondPass second = parts.map(part -> weigh(part, totals)).reduce(SecondPass::merge);
    parts.unpersist();
    return outcome.with(models, second);
  }

  /** Every task has a copy of the totals of its own to add to. */
  private static SecondPass weigh(Part part, SecondPass totals) {
    List<ClusterPart> clusters = SerializationUtils.deserialize(part.clusters());
    clusters.forEach(totals::add);
    return totals;
  }

  private static Part count(
      Iterator<ClusterRecords> clusters,
      CheckSettings checks,
      AnalysisSettings settings,
      Prices prices,
      Scope scope) {
    ClusterOutcome outcome =
        new ClusterOutcome(new ProgramTally(settings), new Scoping(scope, settings));
    ArrayList<ClusterPart> parts = new ArrayList<>();
    Groups groups = new Groups(settings.watershedDigits());
    CostRules costs = new CostRules(prices, settings.laborRateUsd(), settings.volunteerRateUsd());
    while (clusters.hasNext()) {
      CheckedCluster checked = ClusterChecks.check(clusters.next(), checks);
      outcome.findings().addAll(checked.findings());
      outcome.verdicts().addAll(checked.verdicts());
      ClusterHistory history = Histories.of(checked.kept(), settings.rules());
      ClusterView view =
          outcome.scoping().of(new ClusterView(history, groups, costs), groups, costs);
      if (view == null) {
        continue;
      }
      parts.add(outcome.tally().add(view));
      outcome.devices().addAll(DeviceRow.of(view, settings));
      outcome.sites().addAll(SiteRow.of(view, settings));
      outcome.worklist().addAll(WorklistDevice.of(view, settings));
    }
    return new Part(SerializationUtils.serialize(outcome), SerializationUtils.serialize(parts));
  }
}
