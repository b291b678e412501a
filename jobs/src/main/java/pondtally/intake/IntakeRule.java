package pondtally.intake;

import pondtally.record.Code;

/** The rules by which reading judges files, columns, rows and cells. */
public enum IntakeRule implements Code {
  FILE_NOT_READ("file-not-read", "The file is of a kind that holds no records for us."),
  FILE_UNREADABLE("file-unreadable", "The file is broken, protected or not what its name says."),
  FIX_LIST("fix-list", "The file is a list of rows to correct; it replaces rows of other files."),
  ROW_MENDED("row-mended", "A list of corrected rows replaced a cell."),
  MEND_REFUSED("mend-refused", "A correction was not used, since its row is not as it was."),
  FILE_EMPTY("file-empty", "There is nothing in the file."),
  UNRECOGNISED_TABLE("unrecognised-table", "Neither name nor headings tell which table it is."),
  NAME_AND_HEADINGS_DIFFER(
      "name-and-headings-differ", "The name says one table, the headings another."),
  ENCODING_GUESSED("encoding-guessed", "The text is not UTF-8; it was read as Windows-1252."),
  HIDDEN_SHEET("hidden-sheet", "The sheet is hidden; it was read all the same."),
  HIDDEN_ROWS("hidden-rows", "Rows are hidden; they were read all the same."),
  ROWS_ABOVE_HEADINGS("rows-above-headings", "Rows above the headings are not data."),
  MERGED_HEADING("merged-heading", "A heading spans several columns; it names the first only."),
  UNKNOWN_COLUMN("unknown-column", "The column is none of ours; it was not read."),
  DUPLICATE_HEADING("duplicate-heading", "Two columns are the same field; one was read."),
  MISSING_COLUMN("missing-column", "A required column is absent, so no row can be used."),
  FORMULA_VALUE("formula-value", "Formulas were read by the values last stored for them."),
  MISSING_REQUIRED("missing-required", "A required cell is empty."),
  NOT_RECORDED("not-recorded", "A word that says that nothing is known was read as empty."),
  UNSEEN_CHARACTERS("unseen-characters", "Characters that nobody sees stand inside the value."),
  ERROR_CELL("error-cell", "The spreadsheet shows an error instead of a value."),
  UNREADABLE_DATE("unreadable-date", "The text is no date, or no real one."),
  AMBIGUOUS_DATE("ambiguous-date", "Day and month cannot be told apart."),
  DATE_FROM_TEXT("date-from-text", "A date written in another form was read."),
  DATES_REVERSED("dates-reversed", "An end lies before its beginning."),
  UNREADABLE_NUMBER("unreadable-number", "The text is no number, or no whole one where needed."),
  AMBIGUOUS_NUMBER("ambiguous-number", "Decimal mark and separator cannot be told apart."),
  NUMBER_FROM_TEXT("number-from-text", "A number with separators was read."),
  DATE_AS_ID("date-as-id", "An id looks like a date that a spreadsheet made of it."),
  DIGITS_LOST("digits-lost", "A spreadsheet rounded a long number away."),
  UNKNOWN_UNIT("unknown-unit", "The unit is unknown, or of another kind than the field."),
  UNIT_CONVERTED("unit-converted", "A value in another unit was converted."),
  OUT_OF_RANGE("out-of-range", "The value is out of the possible."),
  UNKNOWN_CODE("unknown-code", "The value is not in the list of codes."),
  CODE_MAPPED("code-mapped", "A code in another spelling was read."),
  ID_MERGED("id-merged", "An id was read as another, as aliases.csv says."),
  ALIAS_UNUSED("alias-unused", "aliases.csv merges an id that no record has."),
  VALUE_FILLED("value-filled", "No column holds the field; columns.yaml states its value."),
  MAPPED_HEADING_ABSENT(
      "mapped-heading-absent", "A heading or sheet that columns.yaml names is not there."),
  SHEET_SKIPPED("sheet-skipped", "columns.yaml says that the sheet is not read."),
  ROWS_BELOW_TABLE("rows-below-table", "Rows below the table are not data, as columns.yaml says."),

  LOST_LEADING_ZERO("lost-leading-zero", "A hydrologic unit code has an odd number of digits."),
  RAGGED_ROW("ragged-row", "The row has more or fewer cells than there are headings."),
  STRAY_QUOTE("stray-quote", "A quotation mark is not closed, or stands inside a cell."),
  LONG_CELL("long-cell", "A cell is longer than a workbook's cell can be; it was not read."),
  LONE_TEXT("lone-text", "Nothing but one text stands in the row: a note, not a record."),
  TOTALS_ROW("totals-row", "The row holds totals, not a record."),
  REPEATED_HEADING("repeated-heading", "The headings once more, below the first row of data."),
  REPEATED_YEAR("repeated-year", "The price index of a year stands there twice.");

  private final String code;
  private final String description;

  IntakeRule(String code, String description) {
    this.code = code;
    this.description = description;
  }

  @Override
  public String code() {
    return code;
  }

  /** One sentence on what the rule says. */
  public String description() {
    return description;
  }
}
