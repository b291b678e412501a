package pondtally.intake;

import java.util.regex.Pattern;
import pondtally.schema.FieldSchema;
import pondtally.schema.TextKind;

/** Names, ids and notes: text as it stands, without the white space around it. */
final class TextConverter implements CellConverter {

  private static final String MONTH = "(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)";
  private static final Pattern MONTH_AND_DAY =
      Pattern.compile("\\d{1,2}-" + MONTH + "|" + MONTH + "-\\d{2}");

  private final FieldSchema field;
  private final RowJudge judge;
  private final boolean isFree;

  TextConverter(FieldSchema field, RowJudge judge) {
    this.field = field;
    this.judge = judge;
    this.isFree = field.kind() == TextKind.NOTE;
  }

  @Override
  public Object convert(String text, boolean isNumeric) {
    if (isFree) {
      return text;
    }
    if (mayHoldNothing(text) && Faults.holdsNothing(text, field, judge)) {
      return null;
    }
    return field.kind() == TextKind.PLAIN ? name(text) : id(text);
  }

  /** A name counts as it stands, but may look like another that it is not. */
  private String name(String text) {
    if (Shown.hasUnseen(text)) {
      judge.notice(
          field,
          text,
          IntakeRule.UNSEEN_CHARACTERS,
          "%s holds %s, so it is not the same as the name without. Kept as it stands."
              .formatted(Shown.value(text), Shown.unseenIn(text)),
          Shown.withoutUnseen(text));
    }
    return text;
  }

  private String id(String text) {
    if (Faults.holdsUnseen(text, field, judge)) {
      return null;
    }
    if (isRounded(text)) {
      judge.fault(
          field,
          text,
          IntakeRule.DIGITS_LOST,
          Shown.value(text)
              + " is a long number that a spreadsheet rounded away. Expected the id as text.",
          "");
      return null;
    }
    if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0 || text.indexOf('\t') >= 0) {
      judge.fault(
          field,
          text,
          IntakeRule.UNSEEN_CHARACTERS,
          Shown.value(text) + " holds a line break or tab inside. Expected one id, on one line.",
          "");
      return null;
    }
    if (isDate(text)) {
      judge.notice(
          field,
          text,
          IntakeRule.DATE_AS_ID,
          "%s looks like a date. Spreadsheets turn ids such as 5-9 into dates: check it, and store ids as text. Kept as it stands."
              .formatted(Shown.value(text)),
          "");
    }
    return text;
  }

  private static boolean isDate(String text) {
    return IsoDay.parse(text) != IsoDay.NONE
        || (text.length() == 5 || text.length() == 6) && MONTH_AND_DAY.matcher(text).matches();
  }

  private static boolean mayHoldNothing(String text) {
    return text.length() <= 14 && "nNuUtT#?.-–—".indexOf(text.charAt(0)) >= 0;
  }

  /** Whether the text is of the form 9.9E+10, in which spreadsheets write long numbers. */
  static boolean isRounded(String text) {
    int e = Math.max(text.indexOf("E+"), text.indexOf("e+"));
    return e > 0 && text.matches("\\d([.,]\\d+)?[eE]\\+\\d+");
  }
}
