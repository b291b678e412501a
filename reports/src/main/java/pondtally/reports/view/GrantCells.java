package pondtally.reports.view;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/**
 * Cells of the grant document's tables: the figure with where it was read, or why there is none.
 */
final class GrantCells {

  private GrantCells() {}

  static Sentence words(String words) {
    return Sentence.of(words).build();
  }

  /** A whole number. */
  static Sentence count(Rows row, String column) {
    return cell(row, column, value -> NumberText.count((long) value));
  }

  /** A number of the first of the rows. */
  static Sentence cell(Rows row, String column, DoubleFunction<String> form) {
    OptionalDouble value = number(row, column);
    return value.isEmpty()
        ? words(missing(row, column))
        : Sentence.of("").cell(row, form.apply(value.getAsDouble()), column).build();
  }

  /** The number of rows. */
  static Sentence rows(Rows rows) {
    return Sentence.of("").rows(rows, NumberText.count(rows.list().size())).build();
  }

  /** The sum of a column of whole numbers; not known where there is no row. */
  static Sentence sum(Rows rows, String column) {
    return rows.list().isEmpty()
        ? words(Missing.NOT_KNOWN)
        : Sentence.of("").sum(rows, summed(rows, column), column).build();
  }

  static String summed(Rows rows, String column) {
    return NumberText.count(
        rows.list().stream().mapToLong(row -> (long) Cells.number(row, column).orElse(0)).sum());
  }

  /** An estimate with its limits. */
  static Sentence estimate(
      Rows row, Function<Estimate, String> form, String value, String lower, String upper) {
    Sentence.Builder text = Sentence.of("");
    addEstimate(text, row, form, value, lower, upper);
    return text.build();
  }

  static void addEstimate(
      Sentence.Builder text,
      Rows row,
      Function<Estimate, String> form,
      String value,
      String lower,
      String upper) {
    Optional<Estimate> estimate =
        Estimate.of(number(row, value), number(row, lower), number(row, upper));
    if (estimate.isEmpty()) {
      text.say(missing(row, value));
    } else if (estimate.get().hasLimits()) {
      text.cell(row, form.apply(estimate.get()), value, lower, upper);
    } else {
      text.cell(row, form.apply(estimate.get()), value);
    }
  }

  static OptionalDouble number(Rows rows, String column) {
    return rows.first().map(row -> Cells.number(row, column)).orElse(OptionalDouble.empty());
  }

  /** The number where it is more than {@code least}. */
  static OptionalDouble above(Rows rows, String column, double least) {
    OptionalDouble number = number(rows, column);
    return number.isPresent() && number.getAsDouble() > least ? number : OptionalDouble.empty();
  }

  static String text(Rows rows, String column) {
    return rows.first().map(row -> row.text(column)).orElse("");
  }

  static String missing(Rows rows, String column) {
    Optional<Row> row = rows.first();
    return row.isPresent() && row.get().text(column).equals(Line.WITHHELD)
        ? Missing.WITHHELD
        : Missing.NOT_KNOWN;
  }
}
