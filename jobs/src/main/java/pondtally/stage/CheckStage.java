package pondtally.stage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.api.java.JavaRDD;
import pondtally.check.CheckSettings;
import pondtally.check.CheckedCluster;
import pondtally.check.ClusterChecks;
import pondtally.check.Finding;
import pondtally.check.InstallPlace;
import pondtally.check.IssueBook;
import pondtally.check.KnownIds;
import pondtally.check.LikelyDuplicates;
import pondtally.check.ProgramChecks;
import pondtally.check.Verdict;
import pondtally.record.Budget;
import pondtally.record.ClusterRecords;
import pondtally.record.Expense;

/** The checks alone, without any analysis: what {@code check} answers and a report says too. */
public final class CheckStage {

  private CheckStage() {}

  /** What the checks of some clusters found. */
  private record Part(
      List<Finding> findings,
      List<Verdict> verdicts,
      List<InstallPlace> devices,
      List<String> sites,
      List<String> ponds)
      implements Serializable {

    static Part empty() {
      return new Part(
          new ArrayList<>(),
          new ArrayList<>(),
          new ArrayList<>(),
          new ArrayList<>(),
          new ArrayList<>());
    }

    void add(CheckedCluster cluster) {
      findings.addAll(cluster.findings());
      verdicts.addAll(cluster.verdicts());
      devices.addAll(InstallPlace.of(cluster.kept()));
      cluster
          .kept()
          .sites()
          .forEach(
              site -> {
                sites.add(site.siteId());
                ponds.add(site.pondId() == null ? site.siteId() : site.pondId());
              });
    }

    Part merge(Part other) {
      findings.addAll(other.findings);
      verdicts.addAll(other.verdicts);
      devices.addAll(other.devices);
      sites.addAll(other.sites);
      ponds.addAll(other.ponds);
      return this;
    }
  }

  /** What was noticed, and where every row ended. */
  public static IssueBook run(
      Inputs inputs, JavaRDD<ClusterRecords> clusters, CheckSettings settings) {
    Progress.now(Progress.Step.COUNTING);
    Part all =
        clusters
            .coalesce(clusters.context().defaultParallelism())
            .mapPartitions(part -> List.of(new Handover<>(check(part, settings))).iterator())
            .collect()
            .stream()
            .map(Handover::value)
            .reduce(Part.empty(), Part::merge);
    ProgramChecks.Checked program =
        ProgramChecks.check(
            ClusterRows.only(Budget.class, inputs.programRows()),
            ClusterRows.only(Expense.class, inputs.programRows()),
            settings);
    all.findings().addAll(program.findings());
    all.findings().addAll(LikelyDuplicates.among(all.devices()));
    all.verdicts().addAll(program.verdicts());
    KnownIds known =
        new KnownIds(
            all.sites(), all.ponds(), all.devices().stream().map(InstallPlace::deviceId).toList());
    return CheckTables.book(inputs, all.findings(), all.verdicts(), known);
  }

  private static Part check(Iterator<ClusterRecords> clusters, CheckSettings settings) {
    Part part = Part.empty();
    clusters.forEachRemaining(cluster -> part.add(ClusterChecks.check(cluster, settings)));
    return part;
  }
}
