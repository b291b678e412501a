package pondtally.intake;

import pondtally.schema.FieldSchema;

/** Counts and years: numbers without a fraction. */
final class WholeConverter implements CellConverter {

  private final FieldSchema field;
  private final NumberConverter numbers;
  private final RowJudge judge;

  WholeConverter(FieldSchema field, NumberConverter numbers, RowJudge judge) {
    this.field = field;
    this.numbers = numbers;
    this.judge = judge;
  }

  @Override
  public Object convert(String text, boolean isNumeric) {
    Double number = (Double) numbers.convert(text, isNumeric);
    if (number == null) {
      return null;
    }
    if (number == Math.rint(number)) {
      return number.intValue();
    }
    judge.fault(
        field,
        text,
        IntakeRule.UNREADABLE_NUMBER,
        Shown.value(text) + " is not a whole number. Expected a whole number.",
        "");
    return null;
  }
}
