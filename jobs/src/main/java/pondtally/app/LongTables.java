package pondtally.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pondtally.check.SheetReport;

/**
 * Where tables go that are too long to be held in memory.
 *
 * @param folder existing folder that tasks and driver can reach; null: they are not written
 * @param always whether they are written however many devices there are
 */
public record LongTables(Path folder, boolean always) {

  /** None are written. */
  public static final LongTables NONE = new LongTables(null, false);

  /** With more devices the row-by-row table is written only where it is asked for. */
  public static final long MOST_DEVICES = 100_000;

  /** The folder, where these sheets call for them. */
  Optional<Path> folderFor(List<SheetReport> reports) {
    boolean few = always || installRows(reports) <= MOST_DEVICES;
    return folder != null && few ? Optional.of(folder) : Optional.empty();
  }

  /** Rows of install lists: there are no more devices than that. */
  private static long installRows(List<SheetReport> reports) {
    return reports.stream()
        .filter(report -> "installs".equals(report.table()))
        .mapToLong(report -> report.counts().read())
        .sum();
  }
}
