package pondtally.analysis;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Devices that the forecast need not tell apart. Days count from the data cut.
 *
 * @param watershed group
 * @param goodAge age when last known not failed, days; 0 for devices that stand failed
 * @param age age at the data cut, days
 * @param firstVisit day of the next visit, at least 1
 * @param failed whether they stand failed: mended at the next visit
 */
record SeasonCell(
    String watershed, String pipe, int goodAge, int age, int firstVisit, boolean failed)
    implements Comparable<SeasonCell> {

  private static final int[] WIDTHS = {1, 7, 14, 30, 91};
  private static final int MOST_CELLS = 3_000;

  /**
   * Counts devices by cell, ages and days rounded so far that the cells stay few: to days in most
   * programs, to at most 91 in very large ones.
   */
  static Map<SeasonCell, Long> count(List<WorklistDevice> devices, AnalysisSettings settings) {
    Map<SeasonCell, Long> cells = new TreeMap<>();
    for (int width : WIDTHS) {
      cells.clear();
      for (WorklistDevice device : devices) {
        cells.merge(of(device, settings, width), 1L, Long::sum);
      }
      if (cells.size() <= MOST_CELLS) {
        break;
      }
    }
    return cells;
  }

  private static SeasonCell of(WorklistDevice device, AnalysisSettings settings, int width) {
    int seen = device.lastVisitOn() == null ? device.entryOn() : device.lastVisitOn();
    int due = seen + settings.rules().revisitEveryDays() - settings.rules().asOf();
    int age = rounded(device.ageDays(), width);
    return new SeasonCell(
        device.watershedGroup(),
        device.pipe(),
        device.failed() ? 0 : Math.min(age, rounded(device.goodAgeDays(), width)),
        age,
        device.failed() ? 1 : Math.max(1, rounded(due, width)),
        device.failed());
  }

  private static int rounded(double days, int width) {
    return width * (int) Math.round(days / width);
  }

  /** Whether another has the same watershed and pipe type. */
  boolean isBeside(SeasonCell other) {
    return watershed.equals(other.watershed) && pipe.equals(other.pipe);
  }

  @Override
  public int compareTo(SeasonCell other) {
    int order = watershed.compareTo(other.watershed);
    order = order != 0 ? order : pipe.compareTo(other.pipe);
    order = order != 0 ? order : Integer.compare(goodAge, other.goodAge);
    order = order != 0 ? order : Integer.compare(age, other.age);
    order = order != 0 ? order : Integer.compare(firstVisit, other.firstVisit);
    return order != 0 ? order : Boolean.compare(failed, other.failed);
  }
}
