package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import pondtally.check.Finding;
import pondtally.check.LeftOutValue;
import pondtally.check.Severity;
import pondtally.record.Origin;
import pondtally.schema.FieldSchema;

/** Collects what is noticed about a sheet, and knows what that means for the row in hand. */
final class RowJudge {

  private static final String SET_ASIDE = " Row set aside.";

  private final int file;
  private final int sheet;
  private final String table;
  private final List<Finding> findings = new ArrayList<>();

  private int row;
  private boolean isSetAside;
  private boolean isChanged;

  /**
   * @param table name of the input table; null: not recognised
   */
  RowJudge(int file, int sheet, String table) {
    this.file = file;
    this.sheet = sheet;
    this.table = table;
  }

  /** A message without what it says of the row. */
  static String withoutFate(String message) {
    return message.replace(SET_ASIDE, "").replace(LeftOutValue.ENDING, "");
  }

  /** Begins the next row; 0 for what concerns the sheet as a whole. */
  void start(int rowNumber) {
    row = rowNumber;
    isSetAside = false;
    isChanged = false;
  }

  /** A value that cannot be used: without a required one the row is set aside. */
  void fault(FieldSchema field, String value, IntakeRule rule, String problem, String suggestion) {
    if (field.required()) {
      isSetAside = true;
      add(field.name(), value, Severity.SET_ASIDE, rule, problem + SET_ASIDE, suggestion);
    } else {
      isChanged = true;
      add(field.name(), value, Severity.CHANGED, rule, problem + LeftOutValue.ENDING, suggestion);
    }
  }

  /** A value that was read in another form than it stood. */
  void changed(FieldSchema field, String value, IntakeRule rule, String what, String suggestion) {
    isChanged = true;
    add(field.name(), value, Severity.CHANGED, rule, what, suggestion);
  }

  /**
   * A cell that a list of corrected rows replaced.
   *
   * @param field null: the column is not read
   * @param column heading of a column that is not read
   */
  void mended(FieldSchema field, String column, String value, String what) {
    isChanged = true;
    Origin origin = new Origin(file, sheet, row, false);
    String name = field == null ? null : field.name();
    findings.add(
        new Finding(
            origin,
            table,
            name,
            field == null ? column : null,
            value,
            Severity.CHANGED,
            IntakeRule.ROW_MENDED.code(),
            what,
            ""));
  }

  /** A value changed with the whole of its column, which is told once at the end. */
  void changedWithColumn() {
    isChanged = true;
  }

  /** A value that counts as it stands. */
  void notice(FieldSchema field, String value, IntakeRule rule, String what, String suggestion) {
    add(field.name(), value, Severity.NOTICE, rule, what, suggestion);
  }

  /** The row as a whole counts as it stands. */
  void noticeRow(IntakeRule rule, String value, String what) {
    add(null, value, Severity.NOTICE, rule, what, "");
  }

  /** The row as a whole cannot be used. */
  void setRowAside(IntakeRule rule, String value, String problem) {
    isSetAside = true;
    add(null, value, Severity.SET_ASIDE, rule, problem + SET_ASIDE, "");
  }

  /** Something about the sheet, one of its columns, or the file. */
  void aboutSheet(
      String field,
      String column,
      String value,
      Severity severity,
      IntakeRule rule,
      String message,
      String suggestion) {
    Origin origin = new Origin(file, sheet, 0, false);
    findings.add(
        new Finding(
            origin, table, field, column, value, severity, rule.code(), message, suggestion));
  }

  private void add(
      String field,
      String value,
      Severity severity,
      IntakeRule rule,
      String message,
      String suggestion) {
    Origin origin = new Origin(file, sheet, row, false);
    findings.add(
        new Finding(origin, table, field, null, value, severity, rule.code(), message, suggestion));
  }

  boolean isSetAside() {
    return isSetAside;
  }

  boolean isChanged() {
    return isChanged;
  }

  /** The row in hand as a place of records. */
  Origin origin() {
    return new Origin(file, sheet, row, isChanged);
  }

  /** All findings in row order, those about the sheet first. */
  List<Finding> findings() {
    List<Finding> sorted = new ArrayList<>(findings);
    sorted.sort((a, b) -> a.origin().compareTo(b.origin()));
    return List.copyOf(sorted);
  }
}
