package pondtally.intake;

import java.time.LocalDate;
import pondtally.schema.FieldSchema;

/** Days. YYYY-MM-DD is read as it stands; another form only where it leaves no doubt. */
final class DateConverter implements CellConverter {

  private static final String EXPECTED = " Expected YYYY-MM-DD";

  private final FieldSchema field;
  private final int column;
  private final StatedOrder stated;
  private final SheetClues clues;
  private final RowJudge judge;

  /**
   * @param stated the order that needs not be found out; null: none
   */
  DateConverter(
      FieldSchema field, int column, StatedOrder stated, SheetClues clues, RowJudge judge) {
    this.field = field;
    this.column = column;
    this.stated = stated;
    this.clues = clues;
    this.judge = judge;
  }

  @Override
  public Object convert(String text, boolean isNumeric) {
    int day = IsoDay.parse(text);
    if (day == IsoDay.NONE) {
      day = Faults.holdsNoValue(text, field, judge) ? IsoDay.NONE : other(text);
    }
    return day == IsoDay.NONE || !isPossible(day, text) ? null : (Integer) day;
  }

  private boolean isPossible(int day, String text) {
    if (day >= field.minimum() && day <= field.maximum()) {
      return true;
    }
    fault(
        text,
        IntakeRule.OUT_OF_RANGE,
        " is not possible here. Expected a day from %s to %s."
            .formatted(iso(field.minimum().intValue()), iso(field.maximum().intValue())),
        "");
    return false;
  }

  private int other(String text) {
    DateText date = DateText.of(text);
    return switch (date.form()) {
      case PLAIN -> plain(text, date.dayFirst());
      case YEAR_LAST -> yearLast(text, date);
      case SHORT_YEAR -> none(text, " has a year of two digits.", "");
      case NO_DAY -> none(text, " names no day.", "");
      case SERIAL ->
          none(text, " is no date, but may be a spreadsheet's day number.", serial(text));
      case NO_DATE -> none(text, " is no date.", "");
    };
  }

  private int plain(String text, int day) {
    return day == IsoDay.NONE ? none(text, " is not a real date.", "") : read(text, day, ".");
  }

  private int yearLast(String text, DateText date) {
    if (date.dayFirst() == IsoDay.NONE && date.monthFirst() == IsoDay.NONE) {
      return none(text, " is not a real date.", "");
    }
    if (stated != null) {
      int day = stated.order() == DateOrder.DAY_FIRST ? date.dayFirst() : date.monthFirst();
      return day == IsoDay.NONE
          ? none(
              text, " is not a real date in the order that %s states.".formatted(stated.by()), "")
          : read(text, day, ": " + stated.words() + ".");
    }
    if (date.dayFirst() == IsoDay.NONE || date.dayFirst() == date.monthFirst()) {
      return read(text, date.monthFirst(), ".");
    }
    return date.monthFirst() == IsoDay.NONE
        ? read(text, date.dayFirst(), ".")
        : byColumn(text, date);
  }

  private int byColumn(String text, DateText date) {
    Clues found = clues.dates(column);
    if (found.onlyFirst()) {
      return read(text, date.dayFirst(), as(DateOrder.DAY_FIRST, found.first()));
    }
    if (found.onlySecond()) {
      return read(text, date.monthFirst(), as(DateOrder.MONTH_FIRST, found.second()));
    }
    String why =
        found.equals(Clues.NONE)
            ? "nothing else in this column decides"
            : "this column holds %s day/month/year and %s month/day/year"
                .formatted(found.first(), found.second());
    fault(
        text,
        IntakeRule.AMBIGUOUS_DATE,
        " is %s or %s; %s. Expected YYYY-MM-DD, or the order in the heading, as (DD/MM/YYYY), or in"
                .formatted(iso(date.dayFirst()), iso(date.monthFirst()), why)
            + " columns.yaml, as dates: day/month/year.",
        "");
    return IsoDay.NONE;
  }

  private static String as(DateOrder order, int cells) {
    return ": %s, as in %s.".formatted(order.words(), others(cells));
  }

  private static String others(int cells) {
    return cells == 1
        ? "this column's other date"
        : "this column's other %s dates".formatted(cells);
  }

  private int read(String text, int day, String why) {
    String iso = iso(day);
    judge.changed(
        field,
        text,
        IntakeRule.DATE_FROM_TEXT,
        Shown.value(text) + " is read as " + iso + why,
        iso);
    return day;
  }

  private int none(String text, String problem, String suggestion) {
    fault(
        text,
        IntakeRule.UNREADABLE_DATE,
        problem + EXPECTED + orAsColumn() + " Correct the cell.",
        suggestion);
    return IsoDay.NONE;
  }

  private String orAsColumn() {
    if (stated != null) {
      return ", or %s as %s says.".formatted(stated.order().words(), stated.by());
    }
    Clues found = clues.dates(column);
    if (found.onlyFirst()) {
      return ", or %s as in %s.".formatted(DateOrder.DAY_FIRST.words(), others(found.first()));
    }
    return found.onlySecond()
        ? ", or %s as in %s.".formatted(DateOrder.MONTH_FIRST.words(), others(found.second()))
        : ".";
  }

  private void fault(String text, IntakeRule rule, String problem, String suggestion) {
    judge.fault(field, text, rule, Shown.value(text) + problem, suggestion);
  }

  private String serial(String text) {
    String day = SerialDay.text(Integer.parseInt(text), clues.countsFrom1904());
    return day == null ? "" : day;
  }

  private static String iso(int day) {
    return LocalDate.ofEpochDay(day).toString();
  }
}
