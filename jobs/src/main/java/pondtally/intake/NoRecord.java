package pondtally.intake;

import java.util.regex.Pattern;

/** Rows that stand among the data and are no records: totals, and the headings once more. */
final class NoRecord {

  private static final Pattern TOTAL =
      Pattern.compile(
          "((grand|overall|sub)[ -]?)?totals?( \\d{4})?:?|sum:?|average:?|avg\\.?:?|mean:?",
          Pattern.CASE_INSENSITIVE);

  private final Binding binding;
  private final RowJudge judge;
  private final BoundColumn first;

  NoRecord(Binding binding, RowJudge judge) {
    this.binding = binding;
    this.judge = judge;
    this.first = binding.columns().get(0);
  }

  /** Whether the row is no record; then it has been set aside. */
  boolean test(RawRow row) {
    String cell = Blank.clean(row.cell(first.column()));
    if (cell.equals(first.heading()) && isHeadings(row)) {
      judge.setRowAside(IntakeRule.REPEATED_HEADING, cell, "The headings stand here once more.");
      return true;
    }
    String label = cell.isEmpty() ? firstInk(row) : cell;
    if ("tTsSgGaAmMoO".indexOf(label.charAt(0)) >= 0 && TOTAL.matcher(label).matches()) {
      judge.setRowAside(
          IntakeRule.TOTALS_ROW, label, Shown.value(label) + " marks totals, not a record.");
      return true;
    }
    return false;
  }

  private static String firstInk(RawRow row) {
    int at = 0;
    while (Blank.clean(row.cell(at)).isEmpty()) {
      at++;
    }
    return Blank.clean(row.cell(at));
  }

  private boolean isHeadings(RawRow row) {
    for (BoundColumn column : binding.columns()) {
      String cell = Blank.clean(row.cell(column.column()));
      if (!cell.isEmpty() && !cell.equals(column.heading())) {
        return false;
      }
    }
    return true;
  }
}
