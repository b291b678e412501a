package pondtally.reports.fixlist;

import pondtally.reports.table.Row;
import pondtally.reports.text.Messages;

/**
 * Something noticed about a row, a column or a file.
 *
 * @param row as the spreadsheet shows it; 0 where a whole column, sheet or file is meant
 * @param column the partner's own heading; empty where none is meant
 */
record Issue(
    String file,
    String sheet,
    int row,
    String column,
    String severity,
    String rule,
    String message,
    String suggestion) {

  static Issue of(Row row) {
    String number = row.text("row");
    return new Issue(
        row.text("file"),
        row.text("sheet"),
        number.isEmpty() ? 0 : Integer.parseInt(number),
        row.text("column"),
        row.text("severity"),
        row.text("rule"),
        row.text("message"),
        row.text("suggestion"));
  }

  /** How much it matters: 0 for a row that is not counted, 3 for a mere notice. */
  int rank() {
    return switch (severity) {
      case "set-aside" -> 0;
      case "changed" -> 1;
      default -> isDuplicate() ? 2 : 3;
    };
  }

  /** Whether it only says that an earlier correction was taken over. */
  boolean isDone() {
    return rule.equals("row-mended") || rule.equals("fix-list");
  }

  /** What happened to the row, in words. */
  String fate() {
    return switch (rank()) {
      case 0 -> Messages.of("fixlist.Issue.set-aside-not-counted");
      case 1 -> Messages.of("fixlist.Issue.counted-with-a-changed-or-dropped");
      case 2 -> Messages.of("fixlist.Issue.duplicate-not-counted-twice");
      default -> Messages.of("fixlist.Issue.counted-as-it-stands-please-look");
    };
  }

  private boolean isDuplicate() {
    return rule.startsWith("duplicate");
  }
}
