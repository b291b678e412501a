package pondtally.stage;

import java.io.Serializable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.storage.StorageLevel;
import pondtally.analysis.AnalysisSettings;
import pondtally.analysis.ClusterParts;
import pondtally.analysis.ClusterView;
import pondtally.analysis.ContinuedRemovals;
import pondtally.analysis.Contribution;
import pondtally.analysis.ContributionRows;
import pondtally.analysis.CostRules;
import pondtally.analysis.DeviceRow;
import pondtally.analysis.FittedModels;
import pondtally.analysis.Groups;
import pondtally.analysis.Lapses;
import pondtally.analysis.Prices;
import pondtally.analysis.ProgramTally;
import pondtally.analysis.Scope;
import pondtally.analysis.SecondPass;
import pondtally.analysis.SiteRow;
import pondtally.analysis.WorklistDevice;
import pondtally.check.CheckSettings;
import pondtally.check.CheckedCluster;
import pondtally.check.ClusterChecks;
import pondtally.check.InstallPlace;
import pondtally.history.ClusterHistory;
import pondtally.history.Histories;
import pondtally.record.ClusterRecords;

/**
 * Checks the rows of each cluster against each other, makes its histories and counts them, in one
 * pass.
 */
public final class OutcomeStage {

  /**
   * A task counts so many parts of a large input: all that it counts is in memory at once, beside
   * what is counted already.
   */
  private static final int PARTITIONS_PER_TASK = 4;

  private OutcomeStage() {}

  /** What clusters add up to, and the files of contributions that were written. */
  private record Counted(ClusterOutcome outcome, List<String> runs) implements Serializable {

    Counted merge(Counted other) {
      runs.addAll(other.runs);
      return new Counted(outcome.merge(other.outcome), runs);
    }
  }

  /** What the clusters of one part of the data add up to, and what each contributed. */
  private record Part(Handover<Counted> counted, ClusterParts clusters) implements Serializable {}

  /** Where tasks write contributions, and how. */
  record ContributionTask(String folder, ContributionLines lines) implements Serializable {

    ContributionRuns runs() {
      return new ContributionRuns(Path.of(folder), lines);
    }
  }

  /**
   * What all the clusters add up to: a pass that counts, and one that weighs each cluster against
   * the totals.
   */
  static ClusterOutcome run(
      JavaRDD<ClusterRecords> clusters,
      CheckSettings checks,
      AnalysisSettings settings,
      Prices prices,
      ContributionTask contributions,
      Scope scope) {
    int cores = clusters.context().defaultParallelism();
    boolean isLocal = clusters.context().isLocal();
    int tasks = Math.max(cores, clusters.getNumPartitions() / PARTITIONS_PER_TASK);
    JavaRDD<Part> parts =
        clusters
            .coalesce(tasks)
            .mapPartitions(
                part ->
                    List.of(count(part, checks, settings, prices, contributions, scope)).iterator())
            .persist(
                isLocal && tasks > cores
                    ? StorageLevel.DISK_ONLY()
                    : StorageLevel.MEMORY_AND_DISK());
    Counted counted = Folding.inOrder(parts.map(Part::counted), Counted::merge);
    ClusterOutcome outcome = counted.outcome();
    FittedModels models = FittedModels.of(outcome.tally(), settings);
    SecondPass totals = SecondPass.of(outcome.tally(), models);
    SecondPass second =
        Folding.inOrder(
            parts
                .coalesce(cores)
                .mapPartitions(some -> List.of(new Handover<>(weigh(some, totals))).iterator()),
            SecondPass::merge);
    parts.unpersist();
    return outcome.with(models, second, counted.runs());
  }

  /** Every task has a copy of the totals of its own to add to. */
  private static SecondPass weigh(Iterator<Part> parts, SecondPass totals) {
    parts.forEachRemaining(part -> part.clusters().forEach(totals::add));
    return totals;
  }

  private static Part count(
      Iterator<ClusterRecords> clusters,
      CheckSettings checks,
      AnalysisSettings settings,
      Prices prices,
      ContributionTask contributions,
      Scope scope) {
    ContributionRuns runs = contributions == null ? null : contributions.runs();
    ClusterOutcome outcome =
        new ClusterOutcome(new ProgramTally(settings), new Scoping(scope, settings));
    ClusterParts parts = new ClusterParts();
    Groups groups = new Groups(settings.watershedDigits());
    CostRules costs = new CostRules(prices, settings.laborRateUsd(), settings.volunteerRateUsd());
    while (clusters.hasNext()) {
      CheckedCluster checked = ClusterChecks.check(clusters.next(), checks);
      outcome.findings().addAll(checked.findings());
      outcome.verdicts().addAll(checked.verdicts());
      outcome.places().addAll(InstallPlace.of(checked.kept()));
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
      outcome.lapses().addAll(Lapses.of(view, settings));
      outcome.continued().addAll(ContinuedRemovals.of(view, settings));
      if (runs != null) {
        List<Contribution> rows = new ArrayList<>();
        ContributionRows.of(view, settings, rows::add);
        runs.add(rows);
      }
    }
    parts.close();
    return new Part(new Handover<>(new Counted(outcome, names(runs))), parts);
  }

  private static ArrayList<String> names(ContributionRuns runs) {
    if (runs == null) {
      return new ArrayList<>();
    }
    runs.close();
    return new ArrayList<>(runs.runs());
  }
}
