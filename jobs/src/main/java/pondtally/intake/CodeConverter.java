package pondtally.intake;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import pondtally.record.Code;
import pondtally.schema.FieldSchema;

/**
 * Codes from a closed list. Case, spaces, {@code _} and {@code -} may differ, which is a change;
 * likeness alone never makes a code.
 */
final class CodeConverter implements CellConverter {

  private final FieldSchema field;
  private final RowJudge judge;
  private final Map<String, Code> exact = new HashMap<>();
  private final Map<String, Code> folded = new HashMap<>();

  CodeConverter(FieldSchema field, Class<?> type, RowJudge judge) {
    this.field = field;
    this.judge = judge;
    for (Object constant : type.getEnumConstants()) {
      Code code = (Code) constant;
      exact.put(code.code(), code);
      folded.put(fold(code.code()), code);
    }
  }

  private static String fold(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_\\u00a0\\u2010-\\u2015-]+", "");
  }

  @Override
  public Object convert(String text, boolean isNumeric) {
    Code code = exact.get(text);
    return code != null ? code : convertOther(text);
  }

  private Code convertOther(String text) {
    Code code = folded.get(fold(text));
    if (code != null) {
      judge.changed(
          field,
          text,
          IntakeRule.CODE_MAPPED,
          Shown.value(text) + " is read as " + code.code() + ".",
          code.code());
      return code;
    }
    if (!Faults.holdsNoValue(text, field, judge)) {
      judge.fault(
          field,
          text,
          IntakeRule.UNKNOWN_CODE,
          Shown.value(text)
              + " is no known code. Expected one of: "
              + String.join(", ", field.codes())
              + ".",
          Likeness.nearest(text, field.codes()));
    }
    return null;
  }
}
