package pondtally.intake;

import java.util.regex.Pattern;

/** Rows that stand among the data and are no records: totals, and the headings once more. */
final class NoRecord {

  private static final Pattern TOTAL =
      Pattern.compile(
          "((grand|overall|sub)[ -]?)?totals?( \\d{4})?:?|sum:?|average:?|avg\\.?:?|mean:?",
          Pattern.CASE_INSENSITIVE);

  /** Words that may begin the label of totals and the id of a site. */
  private static final Pattern BEGINS_LIKE_TOTAL =
      Pattern.compile("((grand|overall|sub)[ -]?)?totals?\\b.*", Pattern.CASE_INSENSITIVE);

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
    if ("tTsSgGaAmMoO".indexOf(label.charAt(0)) >= 0 && marksTotals(label, row)) {
      judge.setRowAside(
          IntakeRule.TOTALS_ROW, label, Shown.value(label) + " marks totals, not a record.");
      return true;
    }
    if (isNote(row, label)) {
      judge.setRowAside(
          IntakeRule.LONE_TEXT,
          label,
          "Nothing but %s stands in this row: a note, or a record still to be filled in. Fill it in, or delete it; what stands below the table can be cut off in columns.yaml (stop_at)."
              .formatted(Shown.value(label)));
      return true;
    }
    return false;
  }

  /** A label that only begins like one of totals does not make a whole record one of them. */
  private boolean marksTotals(String label, RawRow row) {
    return TOTAL.matcher(label).matches()
        || (lacksNeeded(row) && BEGINS_LIKE_TOTAL.matcher(label).matches());
  }

  private boolean lacksNeeded(RawRow row) {
    return binding.columns().stream()
        .anyMatch(
            column ->
                column.field().required() && Blank.clean(row.cell(column.column())).isEmpty());
  }

  /** Whether one text is all that stands in a row that needs more: then that has been told. */
  private boolean isNote(RawRow row, String label) {
    int filled = 0;
    for (int i = 0; i < row.width; i++) {
      filled += Blank.clean(row.cell(i)).isEmpty() ? 0 : 1;
    }
    long needed = binding.columns().stream().filter(column -> column.field().required()).count();
    return filled == 1 && needed >= 2 && label.indexOf(' ') > 0;
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
