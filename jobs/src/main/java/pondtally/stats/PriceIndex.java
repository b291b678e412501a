package pondtally.stats;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.NavigableMap;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Yearly price index that turns dollars of one year into dollars of another: amount · index(to) /
 * index(from). Built in are the annual averages of the US consumer price index for all urban
 * consumers, U.S. city average, all items (Bureau of Labor Statistics, series CUUR0000SA0, 1982-84
 * = 100). A general index says nothing about how the price of pipe moved.
 */
public final class PriceIndex implements Serializable {
  private static final long serialVersionUID = 1;
  private static final int MONTHS = 12;
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setCommentMarker('#').get();

  private final TreeMap<Integer, Entry> entries;

  private PriceIndex(TreeMap<Integer, Entry> entries) {
    this.entries = entries;
  }

  /** The published table that comes with the program. */
  public static PriceIndex builtIn() {
    try (InputStream in = PriceIndex.class.getResourceAsStream("price-index.csv")) {
      return read(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A table of one's own, all of its years full.
   *
   * @param indexByYear index above 0 for each year; no year may be missing between first and last
   */
  public static PriceIndex of(NavigableMap<Integer, Double> indexByYear) {
    TreeMap<Integer, Entry> entries = new TreeMap<>();
    indexByYear.forEach((year, index) -> entries.put(year, new Entry(index, MONTHS)));
    return checked(entries);
  }

  private static PriceIndex read(Reader reader) throws IOException {
    TreeMap<Integer, Entry> entries = new TreeMap<>();
    for (CSVRecord row : FORMAT.parse(reader)) {
      entries.put(
          Integer.valueOf(row.get("year")),
          new Entry(Double.parseDouble(row.get("index")), Integer.parseInt(row.get("months"))));
    }
    return checked(entries);
  }

  private static PriceIndex checked(TreeMap<Integer, Entry> entries) {
    if (entries.isEmpty()) {
      throw new IllegalArgumentException("a price index without years");
    }
    for (int year = entries.firstKey(); year <= entries.lastKey(); year++) {
      Entry entry = entries.get(year);
      if (entry == null || !(entry.index > 0 && entry.index < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "price index of " + year + " is " + (entry == null ? "missing" : entry.index));
      }
    }
    return new PriceIndex(entries);
  }

  /** First year of the table. */
  public int firstYear() {
    return entries.firstKey();
  }

  /** Last year of the table, full or not. */
  public int lastYear() {
    return entries.lastKey();
  }

  /** Whether the table has the year. */
  public boolean covers(int year) {
    return entries.containsKey(year);
  }

  /** Whether the year's value rests on less than twelve months, so that it may still change. */
  public boolean isProvisional(int year) {
    return entry(year).months < MONTHS;
  }

  /** The last year up to the one given that has all twelve months; empty if there is none. */
  public OptionalInt lastFullYear(int upTo) {
    return entries.headMap(upTo, true).descendingMap().entrySet().stream()
        .filter(e -> e.getValue().months == MONTHS)
        .mapToInt(e -> e.getKey())
        .findFirst();
  }

  /** Index of a year. Throws {@link YearOutsideTable}. */
  public double index(int year) {
    return entry(year).index;
  }

  /**
   * What one dollar of a year is in dollars of another. Throws {@link YearOutsideTable} for a year
   * that the table lacks.
   */
  public double factor(int fromYear, int toYear) {
    return index(toYear) / index(fromYear);
  }

  /**
   * The year whose index stands for another's: itself if the table has it, the last year if it is
   * later (a provisional conversion). Throws {@link YearOutsideTable} for a year before the first.
   */
  public int nearestYear(int year) {
    return year > lastYear() ? lastYear() : covered(year);
  }

  private int covered(int year) {
    if (!covers(year)) {
      throw new YearOutsideTable(year, firstYear(), lastYear());
    }
    return year;
  }

  private Entry entry(int year) {
    return entries.get(covered(year));
  }

  private record Entry(double index, int months) implements Serializable {}

  /** A year for which the price index has no value; the message names it and the table's span. */
  public static final class YearOutsideTable extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final int year;

    YearOutsideTable(int year, int first, int last) {
      super("the price index has no value for " + year + "; it covers " + first + " to " + last);
      this.year = year;
    }

    /** The year asked for. */
    public int year() {
      return year;
    }
  }
}
