package pondtally.reports.compare;

/**
 * A figure, or a whole row of figures, that differs between two runs.
 *
 * @param row what else singles the row out, as {@code column=value} with semicolons between
 * @param kind {@code changed}, {@code new} or {@code gone}
 * @param before null where not known or no number
 * @param relative difference as a share of the size of the earlier figure; null where that was 0
 * @param sources codes of what can have moved it, with commas between
 */
public record FigureChange(
    String table,
    String grouping,
    String group,
    String row,
    String column,
    String unit,
    String kind,
    Double before,
    Double after,
    Double difference,
    Double relative,
    String beforeText,
    String afterText,
    String sources,
    String why) {

  static final String CHANGED = "changed";
  static final String NEW = "new";
  static final String GONE = "gone";
}
