package pondtally.intake;

import pondtally.schema.FieldSchema;

/** The faults that a cell of any type can have, judged before its own type has a look. */
final class Faults {

  private Faults() {}

  /** Reports a cell that says that nothing is known, or shows an error; false: neither. */
  static boolean holdsNothing(String text, FieldSchema field, RowJudge judge) {
    if (Blank.saysNothing(text)) {
      judge.fault(
          field,
          text,
          field.required() ? IntakeRule.MISSING_REQUIRED : IntakeRule.NOT_RECORDED,
          Shown.value(text) + " is read as not known.",
          "");
      return true;
    }
    if (Blank.isError(text)) {
      judge.fault(
          field,
          text,
          IntakeRule.ERROR_CELL,
          Shown.value(text) + " is an error of the spreadsheet, not a value.",
          "");
      return true;
    }
    return false;
  }
}
