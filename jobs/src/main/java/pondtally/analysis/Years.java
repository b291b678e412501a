package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The stretches of time for which yearly tables have a row: each fiscal year, and the whole record.
 */
final class Years {

  /** Label of the whole record. */
  static final String ALL = "all";

  /** Stands for the whole record among years. */
  static final int WHOLE = Integer.MIN_VALUE;

  /** Days in a year of age or exposure. */
  static final double DAYS = 365.25;

  /**
   * One row's time, [from, to), half days since 1970-01-01.
   *
   * @param year the year, or {@link #WHOLE}
   */
  record Span(int year, int from, int to) {

    /** As written in result tables. */
    String label() {
      return Years.label(year);
    }
  }

  private Years() {}

  private static final int FIRST_LABEL = 1900;
  private static final String[] LABELS =
      IntStream.range(FIRST_LABEL, FIRST_LABEL + 300)
          .mapToObj(Integer::toString)
          .toArray(String[]::new);

  /** A year, or the whole record, as written in result tables; one text for usual years. */
  static String label(int year) {
    if (year == WHOLE) {
      return ALL;
    }
    int i = year - FIRST_LABEL;
    return i >= 0 && i < LABELS.length ? LABELS[i] : Integer.toString(year);
  }

  /**
   * The whole record up to {@code end}, then each fiscal year from {@code start} that begins before
   * {@code end}.
   */
  static List<Span> spans(FiscalYears years, int start, int end) {
    List<Span> spans = new ArrayList<>();
    spans.add(new Span(WHOLE, Integer.MIN_VALUE, end));
    if (start >= end) {
      return spans;
    }
    for (int year = years.of(Math.floorDiv(start, 2)); 2 * years.firstDay(year) < end; year++) {
      spans.add(
          new Span(year, 2 * years.firstDay(year), Math.min(end, 2 * years.firstDay(year + 1))));
    }
    return spans;
  }
}
