package pondtally.sample;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;

/** One cell as a partner has it: text, a number or a date. */
sealed interface Cell {
  record Text(String text) implements Cell {}

  record Amount(BigDecimal number) implements Cell {
    @Override
    public String text() {
      return number.toPlainString();
    }
  }

  record Day(LocalDate day) implements Cell {
    @Override
    public String text() {
      return day.toString();
    }
  }

  /** As a CSV file shows it: ISO dates, a point before decimals. */
  String text();

  static Cell blank() {
    return new Text("");
  }

  static Cell of(String text) {
    return text == null || text.isEmpty() ? blank() : new Text(text);
  }

  static Cell of(LocalDate day) {
    return day == null ? blank() : new Day(day);
  }

  static Cell of(long number) {
    return new Amount(BigDecimal.valueOf(number));
  }

  /** A number rounded to so many decimals. */
  static Cell of(double number, int decimals) {
    return new Amount(BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP));
  }

  default boolean isBlank() {
    return text().isEmpty();
  }
}
