package pondtally.intake;

import pondtally.schema.FieldSchema;

/** The faults that a cell of any type can have, judged before its own type has a look. */
final class Faults {

  private Faults() {}

  /**
   * Reports a cell that says that nothing is known, shows an error or holds characters that nobody
   * sees; false: none of these.
   */
  static boolean holdsNoValue(String text, FieldSchema field, RowJudge judge) {
    return holdsNothing(text, field, judge) || holdsUnseen(text, field, judge);
  }

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
          Shown.value(text)
              + " is an error of the spreadsheet, not a value. Correct its formula, or write the value.",
          "");
      return true;
    }
    return false;
  }

  /**
   * Reports a value with characters inside that nobody sees. They may have come with a copy, or
   * stand for what was lost; what is left without those of the first kind is suggested.
   */
  static boolean holdsUnseen(String text, FieldSchema field, RowJudge judge) {
    if (!Shown.hasUnseen(text)) {
      return false;
    }
    boolean isLoss = text.chars().anyMatch(Character::isISOControl);
    judge.fault(
        field,
        text,
        IntakeRule.UNSEEN_CHARACTERS,
        "%s holds %s. Empty the cell and type the value anew."
            .formatted(Shown.value(text), Shown.unseenIn(text)),
        isLoss ? "" : Shown.withoutUnseen(text));
    return true;
  }
}
