package pondtally.analysis;

/**
 * What the forecast of one device depends on besides its pipe type. Days count from the data cut.
 *
 * @param goodAge age when last known not failed, days; 0 for devices that stand failed
 * @param age age at the data cut, days
 * @param firstVisit day of the next visit, at least 1
 * @param failed whether they stand failed: mended at the next visit
 */
record SeasonCell(int goodAge, int age, int firstVisit, boolean failed)
    implements Comparable<SeasonCell> {

  /** The cell of a device, ages and days rounded to {@code width} days. */
  static SeasonCell of(WorklistDevice device, AnalysisSettings settings, int width) {
    int seen = device.lastVisitOn() == null ? device.entryOn() : device.lastVisitOn();
    int due = seen + settings.rules().revisitEveryDays() - settings.rules().asOf();
    int age = rounded(device.ageDays(), width);
    return new SeasonCell(
        device.failed() ? 0 : Math.min(age, rounded(device.goodAgeDays(), width)),
        age,
        device.failed() ? 1 : Math.max(1, rounded(due, width)),
        device.failed());
  }

  private static int rounded(double days, int width) {
    return width * (int) Math.round(days / width);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * goodAge + age) + 2 * firstVisit + (failed ? 1 : 0);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SeasonCell cell && compareTo(cell) == 0;
  }

  @Override
  public int compareTo(SeasonCell other) {
    int order = Integer.compare(goodAge, other.goodAge);
    order = order != 0 ? order : Integer.compare(age, other.age);
    order = order != 0 ? order : Integer.compare(firstVisit, other.firstVisit);
    return order != 0 ? order : Boolean.compare(failed, other.failed);
  }
}
