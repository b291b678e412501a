package pondtally.intake;

import java.util.Optional;
import pondtally.schema.FieldSchema;
import pondtally.schema.Unit;

/**
 * What the point or comma of a number stands for: as columns.yaml states; else as the other cells
 * of its column show, or those of its sheet where the column is silent. {@code 1.234} and {@code
 * 1,234} can be read in two ways, and where nothing decides they are not read: only a number that
 * would be out of the possible with thousands has a decimal point for certain.
 */
final class DecimalChoice {

  private final FieldSchema field;
  private final int column;
  private final NumberForm form;
  private final SheetClues clues;
  private final RowJudge judge;

  DecimalChoice(FieldSchema field, int column, NumberForm form, SheetClues clues, RowJudge judge) {
    this.field = field;
    this.column = column;
    this.form = form;
    this.clues = clues;
    this.judge = judge;
  }

  /** The number, in the unit of its writer; NaN where its mark is in doubt, which is reported. */
  double read(NumberText parts, String text) {
    if (form.decimal() != null && parts.mark() != NumberText.Mark.NONE) {
      return asStated(parts, text);
    }
    return switch (parts.mark()) {
      case DOUBTFUL_POINT -> doubtfulPoint(parts, text);
      case DOUBTFUL_COMMA -> doubtfulComma(parts, text);
      case COMMA -> clues.numbers(column).first() > 0 ? mixed(text) : parts.withComma();
      default -> parts.withPoint();
    };
  }

  private double asStated(NumberText parts, String text) {
    boolean isComma = form.decimal() == DecimalMark.COMMA;
    if (parts.mark() == (isComma ? NumberText.Mark.POINT : NumberText.Mark.COMMA)) {
      return refused(
          text,
          "%s has a decimal %s, and columns.yaml states decimal: %s. Correct the cell, or the mark in columns.yaml."
              .formatted(
                  Shown.value(text), isComma ? "point" : "comma", isComma ? "comma" : "point"));
    }
    return isComma ? parts.withComma() : parts.withPoint();
  }

  private double doubtfulPoint(NumberText parts, String text) {
    Clues found = clues.numbers(column);
    boolean isSilent = found.equals(Clues.NONE);
    if (found.onlyFirst() || (isSilent && (form.isOurs() || isTooMuch(parts)))) {
      return parts.withPoint();
    }
    return found.onlySecond() ? parts.withComma() : inDoubt(parts, text, "point", found);
  }

  private double doubtfulComma(NumberText parts, String text) {
    Clues found = clues.numbers(column);
    if (found.onlyFirst()) {
      return parts.withPoint();
    }
    return found.onlySecond() ? parts.withComma() : inDoubt(parts, text, "comma", found);
  }

  /** Whether the number would be out of the possible if its point separated thousands. */
  private boolean isTooMuch(NumberText parts) {
    if (field.minimum() == null || field.maximum() == null) {
      return false;
    }
    String named = parts.before().isEmpty() ? parts.after() : parts.before();
    Optional<Unit> unit = named.isEmpty() ? Optional.ofNullable(form.bareUnit()) : Unit.find(named);
    double amount = parts.withComma();
    boolean isComparable =
        unit.isPresent()
            && field.unit() != null
            && unit.get().dimension() == field.unit().dimension();
    double own = isComparable ? unit.get().convert(amount, field.unit()) : amount;
    return own < field.minimum() || own > field.maximum();
  }

  private double inDoubt(NumberText parts, String text, String mark, Clues found) {
    double decimal = mark.equals("point") ? parts.withPoint() : parts.withComma();
    double thousands = mark.equals("point") ? parts.withComma() : parts.withPoint();
    return refused(
        text,
        "%s is %s if its %s is the decimal mark, and %s if it separates thousands; %s. Write %s0 or %s, or in columns.yaml which mark the partner uses, as decimal: point or decimal: comma."
            .formatted(
                Shown.value(text),
                PlainText.of(decimal),
                mark,
                PlainText.of(thousands),
                found.equals(Clues.NONE)
                    ? "no other cell of the sheet decides"
                    : "%s and %s a decimal comma".formatted(pointed(found.first()), found.second()),
                (parts.isNegative() ? "-" : "") + parts.figures(),
                PlainText.of(thousands)));
  }

  /** A decimal comma among decimal points. */
  private double mixed(String text) {
    return refused(
        text,
        "%s has a decimal comma, and %s. Correct the cells that are wrong, or write in columns.yaml which mark the partner uses, as decimal: point or decimal: comma."
            .formatted(Shown.value(text), pointed(clues.numbers(column).first())));
  }

  private static String pointed(int cells) {
    return cells == 1
        ? "1 other cell has a decimal point"
        : cells + " other cells have a decimal point";
  }

  private double refused(String text, String problem) {
    judge.fault(field, text, IntakeRule.AMBIGUOUS_NUMBER, problem, "");
    return Double.NaN;
  }
}
