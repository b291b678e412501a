package pondtally.check;

import java.util.List;
import pondtally.record.ClusterRecords;

/**
 * Checks the rows of a cluster against each other. Rules run in the order below, and a row that a
 * rule sets aside is gone for the ones after it: a row has one fate, and one reason from here.
 */
public final class ClusterChecks {

  private static final List<ClusterRule> RULES =
      List.of(
          DuplicateRows::apply,
          DatesAfterCut::apply,
          DifferingSites::apply,
          DeviceDates::apply,
          UnknownSites::apply,
          AreaPonds::apply,
          SameDayVisits::apply,
          ClusterChecks::settleLives,
          RemovalsCountedTwice::apply,
          PropertyRows::apply,
          MissingWatersheds::apply,
          LineCosts::apply,
          LumpSums::apply,
          FailuresOnEntryDay::apply,
          SilentDevices::apply,
          UnmeasuredPonds::apply);

  /** Rules that lean on each other: which visit opens a life decides which install row counts. */
  private static final List<ClusterRule> LIVES =
      List.of(
          DifferingInstalls::apply,
          UnknownDevices::apply,
          VisitsBeforeInstall::apply,
          VisitsAfterEnd::apply);

  private ClusterChecks() {}

  /**
   * The cluster with the rows that count, and why the others do not. The order of the lists does
   * not matter; rows that name a device or site unknown to the whole program come in a cluster of
   * their own and are set aside.
   *
   * @param raw every row that was read well; each stands at a place of its own
   */
  public static CheckedCluster check(ClusterRecords raw, CheckSettings settings) {
    OpenCluster cluster = new OpenCluster(raw, settings);
    RULES.forEach(rule -> rule.apply(cluster));
    return cluster.close();
  }

  /** Until nothing more is taken out, so that what is kept would pass again. */
  private static void settleLives(OpenCluster cluster) {
    int before;
    do {
      before = cluster.rowsKept();
      LIVES.forEach(rule -> rule.apply(cluster));
    } while (cluster.rowsKept() < before);
  }
}
