package pondtally.intake;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import pondtally.check.Severity;
import pondtally.schema.FieldSchema;
import pondtally.schema.Unit;

/** Decimal numbers, in the field's own unit. */
final class NumberConverter implements CellConverter {

  private final FieldSchema field;
  private final Unit bareUnit;
  private final NumberForm form;
  private final DecimalChoice marks;
  private final RowJudge judge;
  private final boolean isConverted;
  private int converted;

  NumberConverter(
      FieldSchema field, int column, NumberForm form, SheetClues clues, RowJudge judge) {
    this.field = field;
    this.form = form;
    this.bareUnit = form.bareUnit();
    this.marks = new DecimalChoice(field, column, form, clues, judge);
    this.judge = judge;
    this.isConverted = bareUnit != field.unit();
  }

  @Override
  public Object convert(String text, boolean isNumeric) {
    double number = PlainNumber.parse(text);
    if (!Double.isNaN(number) && (isNumeric || !isDoubtful(text))) {
      return bare(number, text);
    }
    if (Faults.holdsNoValue(text, field, judge)) {
      return null;
    }
    if (TextConverter.isRounded(text)) {
      fault(text, IntakeRule.DIGITS_LOST, " is a number that a spreadsheet rounded.");
      return null;
    }
    return dressed(text);
  }

  private boolean isDoubtful(String text) {
    return form.decimal() == DecimalMark.COMMA
        ? text.indexOf('.') >= 0
        : form.decimal() == null && PlainNumber.hasDoubtfulPoint(text);
  }

  private Double bare(double number, String text) {
    if (form.refused() != null) {
      return refuse(text, form.refused());
    }
    if (!isConverted) {
      return possible(number, text, text);
    }
    double own = bareUnit.convert(number, field.unit());
    Double value = possible(own, text, text + " " + bareUnit.symbol());
    if (value != null) {
      converted++;
      judge.changedWithColumn();
    }
    return value;
  }

  private Double dressed(String text) {
    double[] pair = FeetAndInches.of(text);
    if (pair != null && field.unit() != null && Unit.FOOT.dimension() == field.unit().dimension()) {
      return converted(Unit.INCH.convert(pair[0] * 12 + pair[1], field.unit()), text);
    }
    double hours = HoursAndMinutes.of(text);
    if (!Double.isNaN(hours) && field.unit() == Unit.HOUR) {
      return converted(hours, text);
    }
    NumberText parts = NumberText.of(text);
    if (parts.mark() == NumberText.Mark.BROKEN) {
      fault(text, IntakeRule.UNREADABLE_NUMBER, " is no number.");
      return null;
    }
    double number = marks.read(parts, text);
    return !Double.isNaN(number) ? withUnit(number, parts, text) : null;
  }

  private Double withUnit(double number, NumberText parts, String text) {
    if (parts.before().isEmpty() && parts.after().isEmpty()) {
      return separated(bare(number, text), number, parts, text);
    }
    String named = parts.before().isEmpty() ? parts.after() : parts.before();
    Optional<Unit> unit = Unit.find(named);
    if (unit.isEmpty()) {
      return unknownUnit(text, named, !parts.before().isEmpty());
    }
    if (!parts.before().isEmpty() && !isRepeated(unit.get(), parts.after())) {
      return unknownUnit(text, parts.after(), false);
    }
    if (field.unit() == null || unit.get().dimension() != field.unit().dimension()) {
      return refuse(text, named);
    }
    // A unit that its heading leads one to expect is no change; any other is told.
    return unit.get() == field.unit() && !isConverted
        ? separated(possible(number, text, text), number, parts, text)
        : converted(unit.get().convert(number, field.unit()), text);
  }

  private static boolean isRepeated(Unit unit, String after) {
    return after.isEmpty() || Unit.find(after).filter(unit::equals).isPresent();
  }

  /** Words before a number, or figures behind it, are no units. */
  private Double unknownUnit(String text, String named, boolean isBefore) {
    boolean isWord = isBefore && named.length() > 3 && !CurrencySign.isIn(named);
    if (isWord || named.chars().anyMatch(Character::isDigit)) {
      fault(text, IntakeRule.UNREADABLE_NUMBER, " is no number.");
      return null;
    }
    return refuse(text, named);
  }

  private Double refuse(String text, String unit) {
    String what =
        field.unit() == null
            ? " is no unit that this column can have."
            : " is no unit of " + field.unit().dimension().name().toLowerCase(Locale.ROOT) + ".";
    String whose = unit.equals(form.refused()) ? ": the heading's " : ": ";
    fault(text, IntakeRule.UNKNOWN_UNIT, whose + Shown.value(unit) + what);
    return null;
  }

  private Double converted(double value, String text) {
    Double possible = possible(value, text, text);
    if (possible != null) {
      String shown = PlainText.rounded(value) + " " + field.unit().plural();
      // Nothing is suggested: the cell says it best, in its writer's own unit and digits.
      changed(text, IntakeRule.UNIT_CONVERTED, shown, "");
    }
    return possible;
  }

  /** Tells that a number was read as another than it looks like, in the unit of its writer. */
  private Double separated(Double value, double number, NumberText parts, String text) {
    boolean hasUnit = !parts.before().isEmpty() || !parts.after().isEmpty();
    boolean looksOther =
        hasUnit
            ? (number < 0 && text.indexOf('-') < 0) || isBehindMark(parts) || isOnTwoLines(text)
            : PlainNumber.parse(text) != number;
    if (value != null && (parts.hasSeparators() || looksOther)) {
      String shown = PlainText.of(number);
      boolean hasPoint = form.decimal() != DecimalMark.COMMA;
      changed(text, IntakeRule.NUMBER_FROM_TEXT, shown, hasPoint ? shown : "");
    }
    return value;
  }

  /** {@code '9} may be nine feet, or a nine kept as text; {@code $9 USD} is clear. */
  private static boolean isBehindMark(NumberText parts) {
    return !parts.before().isEmpty() && !CurrencySign.isIn(parts.before());
  }

  private static boolean isOnTwoLines(String text) {
    return text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0 || text.indexOf('\t') >= 0;
  }

  private void changed(String text, IntakeRule rule, String shown, String suggestion) {
    judge.changed(field, text, rule, Shown.value(text) + " is read as " + shown + ".", suggestion);
  }

  /** The value, unless it is out of the possible; {@code said} is it as its sender meant it. */
  private Double possible(double value, String text, String said) {
    boolean isLow = field.minimum() != null && value < field.minimum();
    if (!isLow && (field.maximum() == null || value <= field.maximum())) {
      return value;
    }
    String unit = field.unit() == null ? "" : behind(field.unit());
    String limit = PlainText.of(isLow ? field.minimum() : field.maximum()) + unit;
    boolean isOwn = PlainNumber.parse(said) == value;
    judge.fault(
        field,
        text,
        IntakeRule.OUT_OF_RANGE,
        "%s%s is %s than %s, the %s possible. Correct %s."
            .formatted(
                Shown.value(text),
                isOwn ? "" : " (" + PlainText.rounded(value) + unit + ")",
                isLow ? "less" : "more",
                limit,
                isLow ? "least" : "most",
                field.unit() == null || value < 0 ? "the number" : "the number or its unit"),
        perhapsMetric(value, text));
    return null;
  }

  private static String behind(Unit unit) {
    return unit == Unit.DEGREE ? unit.symbol() : " " + unit.symbol();
  }

  /** Millimeters in a column of inches are the usual mistake. */
  private String perhapsMetric(double value, String text) {
    if (field.unit() != Unit.INCH || isConverted) {
      return "";
    }
    double inches = Unit.MILLIMETER.convert(value, Unit.INCH);
    boolean fits = inches >= field.minimum() && inches <= field.maximum();
    return fits && PlainNumber.parse(text) == value ? text + " mm" : "";
  }

  private void fault(String text, IntakeRule rule, String problem) {
    judge.fault(field, text, rule, Shown.value(text) + problem + " " + expected(), "");
  }

  /** In the unit of the heading, which is what a bare number would be taken for. */
  private String expected() {
    if (bareUnit == null) {
      return "Expected a number.";
    }
    String like = unitsLike(bareUnit);
    return like.equals(bareUnit.symbol())
        ? "Expected a number of %s.".formatted(bareUnit.plural())
        : "Expected a number of %s, or one followed by its unit (%s)."
            .formatted(bareUnit.plural(), like);
  }

  /** Signs of all units that measure the same. */
  static String unitsLike(Unit own) {
    return Arrays.stream(Unit.values())
        .filter(unit -> unit.dimension() == own.dimension())
        .map(Unit::symbol)
        .collect(Collectors.joining(", "));
  }

  @Override
  public void finish() {
    if (converted > 0) {
      judge.aboutSheet(
          field.name(),
          null,
          "",
          Severity.CHANGED,
          IntakeRule.UNIT_CONVERTED,
          "%s says %s: %s %s converted to %s."
              .formatted(
                  form.unitBy(),
                  bareUnit.plural(),
                  converted,
                  converted == 1 ? "value was" : "values were",
                  field.unit().plural()),
          "");
    }
  }
}
