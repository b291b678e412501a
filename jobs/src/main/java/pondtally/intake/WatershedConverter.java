package pondtally.intake;

import pondtally.schema.FieldSchema;

/**
 * Watershed codes, kept as text. A hydrologic unit code has 2 to 12 digits, two for each level
 * (Federal Standards and Procedures for the National Watershed Boundary Dataset, USGS and NRCS
 * 2013), so an odd number of digits means that a spreadsheet took a leading zero away.
 */
final class WatershedConverter implements CellConverter {

  private final FieldSchema field;
  private final RowJudge judge;

  WatershedConverter(FieldSchema field, RowJudge judge) {
    this.field = field;
    this.judge = judge;
  }

  @Override
  public Object convert(String text, boolean isNumeric) {
    if (isDigits(text)) {
      return digits(text);
    }
    if (Faults.holdsNoValue(text, field, judge)) {
      return null;
    }
    if (TextConverter.isRounded(text)) {
      judge.fault(
          field,
          text,
          IntakeRule.DIGITS_LOST,
          Shown.value(text)
              + " is a code that a spreadsheet rounded away. Expected all its digits, in a cell"
              + " formatted as text.",
          "");
      return null;
    }
    return text.matches("\\d+\\.0+") ? withoutPoint(text) : text;
  }

  private String withoutPoint(String text) {
    String code = text.substring(0, text.indexOf('.'));
    judge.changed(
        field,
        text,
        IntakeRule.NUMBER_FROM_TEXT,
        Shown.value(text) + " is read as " + code + ".",
        code);
    return digits(code);
  }

  private String digits(String code) {
    boolean isOdd = code.length() % 2 != 0;
    if (isOdd && code.length() < 12) {
      judge.notice(
          field,
          code,
          IntakeRule.LOST_LEADING_ZERO,
          Shown.value(code)
              + " has an odd number of digits; hydrologic unit codes have 2 to 12, an even number"
              + " of them. Was a leading zero lost? Kept as it stands.",
          "0" + code);
    }
    return code;
  }

  private static boolean isDigits(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }
}
