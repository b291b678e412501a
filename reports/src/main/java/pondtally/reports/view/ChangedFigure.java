package pondtally.reports.view;

import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** Figures of a comparison: before and after are printed alike. */
public final class ChangedFigure {

  private static final int MOST_DECIMALS = 6;

  private ChangedFigure() {}

  /**
   * The figure in the form that suits its unit, with the decimals that make the difference visible;
   * {@code not known} where there is none.
   */
  public static String print(OptionalDouble value, OptionalDouble difference, Row row) {
    return value.isEmpty()
        ? Missing.NOT_KNOWN
        : print(value.getAsDouble(), Math.abs(difference.orElse(0)), row);
  }

  /** How far up or down: {@code up 12}. */
  public static String difference(Row row) {
    double difference = row.number("difference").orElse(0);
    double size = Math.abs(difference);
    String by =
        isShare(row.text("column"))
            ? Messages.of("number.points", Map.of("number", share(size, size)))
            : size(size, row);
    return Messages.reports()
        .text(difference < 0 ? "compare.down" : "compare.up", Map.of("by", by));
  }

  /** With the decimals of the two figures, so that it reads as what is between them. */
  private static String size(double size, Row row) {
    double before = Math.abs(row.number("before").orElse(0));
    double after = Math.abs(row.number("after").orElse(0));
    boolean isWhole = size == Math.rint(size) && after == Math.rint(after);
    return row.text("unit").equals("usd") || isWhole
        ? print(size, size, row)
        : NumberText.decimal(size, decimals(Math.max(before, after), size));
  }

  private static String print(double value, double difference, Row row) {
    if (row.text("unit").equals("usd") && (difference >= 0.5 || difference == 0)) {
      return NumberText.dollars(value);
    }
    if (isShare(row.text("column"))) {
      return Messages.of("number.percent", Map.of("number", share(value, difference)));
    }
    boolean isWhole = value == Math.rint(value) && difference == Math.rint(difference);
    return NumberText.decimal(value, isWhole ? 0 : decimals(value, difference));
  }

  private static String share(double value, double difference) {
    return NumberText.decimal(100 * value, Math.max(1, visible(100 * difference)));
  }

  /** Three digits, and never so few that two figures that differ look alike. */
  private static int decimals(double value, double difference) {
    double size = Math.abs(value);
    int three = size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
    return Math.max(three, visible(difference));
  }

  /** Decimals at which a difference shows. */
  private static int visible(double difference) {
    return difference > 0
        ? Math.min(MOST_DECIMALS, Math.max(0, (int) Math.ceil(-Math.log10(difference))))
        : 0;
  }

  private static boolean isShare(String column) {
    return column.startsWith("survival_") || column.equals("share") || column.startsWith("chance");
  }
}
