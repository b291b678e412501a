package pondtally.intake;

import java.util.Locale;
import java.util.Set;
import pondtally.schema.FieldSchema;

/** Yes or no, and the few other spellings that can mean nothing else. */
final class YesNoConverter implements CellConverter {

  private static final Set<String> YES = Set.of("yes", "y", "true", "t", "1", "x", "✓", "✔");
  private static final Set<String> NO = Set.of("no", "n", "false", "f", "0");

  private final FieldSchema field;
  private final RowJudge judge;

  YesNoConverter(FieldSchema field, RowJudge judge) {
    this.field = field;
    this.judge = judge;
  }

  @Override
  public Object convert(String text, boolean isNumeric) {
    if (text.equals("yes")) {
      return true;
    }
    if (text.equals("no")) {
      return false;
    }
    return convertOther(text);
  }

  private Boolean convertOther(String text) {
    String folded = text.toLowerCase(Locale.ROOT);
    boolean isYes = YES.contains(folded);
    if (isYes || NO.contains(folded)) {
      String code = isYes ? "yes" : "no";
      judge.changed(
          field,
          text,
          IntakeRule.CODE_MAPPED,
          Shown.value(text) + " is read as " + code + ".",
          code);
      return isYes ? Boolean.TRUE : Boolean.FALSE;
    }
    if (!Faults.holdsNoValue(text, field, judge)) {
      judge.fault(
          field,
          text,
          IntakeRule.UNKNOWN_CODE,
          Shown.value(text) + " is neither yes nor no. Expected yes or no.",
          "");
    }
    return null;
  }
}
