package pondtally.sample;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * A column of a partner's file.
 *
 * @param field our field name
 * @param heading the partner's own heading
 * @param unit unit its heading carries where that is not ours: {@code mm, cm, m, ha}; else empty
 */
record Column(String field, String heading, String unit) {
  /** Pipe sizes as metric trade sizes in mm, by inches. */
  private static final Map<String, Integer> TRADE_MM = Map.of("10", 250, "12", 300, "15", 380);

  private static final BigDecimal SQUARE_METERS_PER_ACRE = new BigDecimal("4046.8564224");

  /** Columns from {@code field}, {@code field=Heading} or {@code field=Heading (unit)|unit}. */
  static List<Column> list(String... specifications) {
    return Arrays.stream(specifications).map(Column::parse).toList();
  }

  private static Column parse(String specification) {
    String[] named = specification.split("=", 2);
    if (named.length == 1) {
      return new Column(named[0], named[0], "");
    }
    String[] united = named[1].split("\\|", 2);
    return new Column(named[0], united[0], united.length == 2 ? united[1] : "");
  }

  /** The cell of this column in that row, in the column's unit unless written otherwise. */
  Cell cell(Row row) {
    if (row.isWritten(field)) {
      return row.written(field);
    }
    Cell value = row.get(field);
    return unit.isEmpty() || value.isBlank() ? value : converted(value);
  }

  /** Whether this cell's unit comes from the heading. */
  boolean convertsByHeading(Row row) {
    return !unit.isEmpty() && !row.isWritten(field) && row.has(field);
  }

  private Cell converted(Cell value) {
    BigDecimal number = new BigDecimal(value.text());
    return switch (unit) {
      case "mm" -> Cell.of(millimeters(number));
      case "cm" -> Cell.of(millimeters(number) / 10);
      case "m" ->
          new Cell.Amount(
              number.multiply(new BigDecimal("0.3048")).setScale(1, RoundingMode.HALF_UP));
      case "ha" ->
          new Cell.Amount(
              number
                  .multiply(SQUARE_METERS_PER_ACRE)
                  .movePointLeft(4)
                  .setScale(2, RoundingMode.HALF_UP));
      default -> throw new IllegalStateException("No such unit: " + unit);
    };
  }

  private static long millimeters(BigDecimal inches) {
    Integer trade = TRADE_MM.get(inches.toPlainString());
    BigDecimal exact = inches.multiply(new BigDecimal("25.4"));
    return trade != null ? trade : exact.setScale(0, RoundingMode.HALF_UP).longValueExact();
  }
}
