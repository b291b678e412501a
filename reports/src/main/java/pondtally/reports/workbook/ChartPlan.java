package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.view.Line;

/**
 * A chart that stays tied to cells.
 *
 * @param title says what is seen
 * @param description alternative text: what the chart shows and where its figures stand
 * @param series told apart by color and by dash or pattern
 */
record ChartPlan(
    String title,
    String description,
    Kind kind,
    String horizontal,
    String vertical,
    String valueFormat,
    List<Series> series) {

  /**
   * How many lines, from the first, have a figure: a spreadsheet draws what is not known as zero,
   * so such lines stand last and stay out of charts.
   */
  static int leading(List<Line> lines, String column, int most) {
    int count = 0;
    while (count < Math.min(most, lines.size()) && lines.get(count).number(column).isPresent()) {
      count++;
    }
    return count;
  }

  /** Kinds of chart. */
  enum Kind {
    /** Upright bars side by side. */
    COLUMNS,
    /** Upright bars on top of each other. */
    STACKED,
    /** Lines through points with two number axes; also draws steps. */
    LINES
  }

  /**
   * One set of points.
   *
   * @param sheet where its cells stand; empty for the chart's own sheet
   * @param x column of categories or of horizontal values
   * @param y column of values
   * @param from first line, counted from 0
   * @param count how many lines
   * @param minus column with the length of the lower error bar; empty for none
   * @param plus column with the length of the upper error bar; empty for none
   */
  record Series(
      String name,
      String sheet,
      String x,
      String y,
      int from,
      int count,
      String minus,
      String plus,
      boolean faint) {

    static Series of(String name, String x, String y, int count) {
      return new Series(name, "", x, y, 0, count, "", "", false);
    }

    Series withLimits(String lowerLength, String upperLength) {
      return new Series(name, sheet, x, y, from, count, lowerLength, upperLength, faint);
    }

    Series on(String otherSheet, int first) {
      return new Series(name, otherSheet, x, y, first, count, minus, plus, faint);
    }

    /** Thin, for limits around an estimate. */
    Series thin() {
      return new Series(name, sheet, x, y, from, count, minus, plus, true);
    }
  }
}
