package pondtally.check;

import pondtally.record.Install;

/** The dates of an install row against each other and against the data cut. */
final class DeviceDates {

  private DeviceDates() {}

  static void apply(OpenCluster cluster) {
    for (Install row : cluster.installs.list()) {
      checkRetired(cluster, row);
      checkTracked(cluster, row);
    }
  }

  private static void checkRetired(OpenCluster cluster, Install row) {
    if (row.retiredOn() == null) {
      return;
    }
    if (row.retiredOn() < row.installedOn()) {
      drop(cluster, row, CheckRule.RETIRED_BEFORE_INSTALL, retiredTooEarly(row));
    } else if (row.retiredOn() > cluster.settings.asOf()) {
      drop(cluster, row, CheckRule.RETIRED_AFTER_CUT, retiredTooLate(row, cluster.settings));
    }
  }

  private static void drop(OpenCluster cluster, Install row, CheckRule rule, String message) {
    cluster.installs.drop(
        row, Remark.cell(rule, "retired_on", Words.date(row.retiredOn()), message));
  }

  private static String retiredTooEarly(Install row) {
    return """
        %s is before the install on %s. The date was dropped: the device counts \
        as not retired by this row. Correct whichever date is wrong."""
        .formatted(Words.date(row.retiredOn()), Words.date(row.installedOn()));
  }

  private static String retiredTooLate(Install row, CheckSettings settings) {
    return row.retiredOn() > settings.today()
        ? """
            %s is in the future (this check was run on %s). The date was dropped: \
            the device counts as not yet retired. Correct the date if it is wrong."""
            .formatted(Words.date(row.retiredOn()), Words.date(settings.today()))
        : """
            %s is after the data cut of %s. The date was dropped: at the cut the \
            device was not yet retired. If the date is right, nothing needs \
            correcting."""
            .formatted(Words.date(row.retiredOn()), Words.date(settings.asOf()));
  }

  private static void checkTracked(OpenCluster cluster, Install row) {
    if (row.trackedFrom() == null) {
      return;
    }
    if (row.trackedFrom() < row.installedOn()) {
      notice(
          cluster,
          row,
          CheckRule.TRACKED_BEFORE_INSTALL,
          """
              %s is before the install on %s. The device is counted from the install. \
              Correct whichever date is wrong."""
              .formatted(Words.date(row.trackedFrom()), Words.date(row.installedOn())));
    } else if (row.trackedFrom() > cluster.settings.asOf()) {
      notice(
          cluster,
          row,
          CheckRule.TRACKED_AFTER_CUT,
          """
              %s is after the data cut of %s. The device adds no time under \
              observation yet. Correct the date if it is wrong."""
              .formatted(Words.date(row.trackedFrom()), Words.date(cluster.settings.asOf())));
    }
  }

  private static void notice(OpenCluster cluster, Install row, CheckRule rule, String message) {
    cluster.installs.notice(
        row, Remark.cell(rule, "tracked_from", Words.date(row.trackedFrom()), message));
  }
}
