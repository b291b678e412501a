package pondtally.reports.app;

import java.io.PrintWriter;
import java.util.Locale;
import pondtally.reports.table.Row;
import pondtally.stats.ExactSum;

/** Prints contributions one a line, and their sum. */
final class TraceLines {

  private static final String FORMAT = "%16s  %-10s %-12s %-12s %s";

  private final PrintWriter out;
  private final String unit;
  private final String number;
  private final ExactSum sum = new ExactSum();
  private long rows;

  TraceLines(PrintWriter out, String unit) {
    this.out = out;
    this.unit = unit;
    this.number = unit.endsWith("usd") ? "%,.2f" : "%,.4f";
    out.println(
        String.format(Locale.ROOT, FORMAT, unit, "year", "site", "device", "file, sheet, row"));
  }

  void print(Row row) {
    double amount = row.number("amount").orElseThrow();
    sum.add(amount);
    rows++;
    String sheet = row.text("sheet").isEmpty() ? "" : ", " + row.text("sheet");
    String part = row.text("part").isEmpty() ? "" : " (" + row.text("part") + ")";
    out.println(
        String.format(
            Locale.ROOT,
            FORMAT,
            number(amount),
            row.text("year"),
            row.text("site_id"),
            row.text("device_id"),
            row.text("file") + sheet + ", row " + row.text("row") + part));
  }

  /** The last line: what the rows add up to. */
  void total(String what) {
    out.println(
        String.format(
            Locale.ROOT,
            "%16s  %s: total of %,d %s, %s",
            number(sum.result()),
            what,
            rows,
            rows == 1 ? "row" : "rows",
            unit));
  }

  private String number(double value) {
    return String.format(Locale.ROOT, number, value);
  }
}
