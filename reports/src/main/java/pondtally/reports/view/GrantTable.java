package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;

/**
 * A table of the grant document. Each cell is a sentence, so that it carries the figures that it
 * prints; a figure that is not known is said in words, no cell is empty.
 *
 * @param title caption above the table
 * @param description what a reader who cannot see the table is told about it
 * @param note what stands below it: how to read it and what is left out
 * @param columns headings
 * @param numbers for each column, whether it holds short numbers, which are set to the right
 */
public record GrantTable(
    String title,
    String description,
    String note,
    List<String> columns,
    List<Boolean> numbers,
    List<List<Sentence>> rows) {

  /** Starts a table. */
  public static Builder of(String title) {
    return new Builder(title);
  }

  /** Whether a column holds short numbers. */
  public boolean isNumber(int column) {
    return numbers.get(column);
  }

  /** Heading and cells of a column. */
  public List<String> texts(int column) {
    return Stream.concat(
            Stream.of(columns.get(column)), rows.stream().map(row -> row.get(column).text()))
        .toList();
  }

  /** Puts a table together. */
  public static final class Builder {

    private final String title;
    private final List<String> columns = new ArrayList<>();
    private final List<Boolean> numbers = new ArrayList<>();
    private final List<List<Sentence>> rows = new ArrayList<>();

    private Builder(String title) {
      this.title = title;
    }

    /** Adds a column of words. */
    public Builder words(String heading) {
      columns.add(heading);
      numbers.add(false);
      return this;
    }

    /** Adds columns of short numbers. */
    public Builder numbers(String... headings) {
      for (String heading : headings) {
        columns.add(heading);
        numbers.add(true);
      }
      return this;
    }

    /** Adds a row of as many cells as there are columns. */
    public Builder row(Sentence... cells) {
      if (cells.length != columns.size()) {
        throw new IllegalArgumentException(cells.length + " cells for " + columns);
      }
      rows.add(List.of(cells));
      return this;
    }

    public boolean isEmpty() {
      return rows.isEmpty();
    }

    /** Adds the finished table to {@code tables} unless it has no rows. */
    public void addTo(List<GrantTable> tables, String eachRow, String note) {
      if (rows.isEmpty()) {
        return;
      }
      List<Integer> kept = IntStream.range(0, columns.size()).filter(this::isKept).boxed().toList();
      List<String> headings = kept.stream().map(columns::get).toList();
      tables.add(
          new GrantTable(
              title,
              Messages.of(
                  "view.GrantTable.columns-first-row-headings",
                  Map.of("eachRow", eachRow, "part", String.join("; ", headings))),
              note + unknown(),
              headings,
              kept.stream().map(numbers::get).toList(),
              rows.stream().map(row -> kept.stream().map(row::get).toList()).toList()));
    }

    /** A column of numbers that no row knows is named below the table instead. */
    private boolean isKept(int column) {
      return !numbers.get(column)
          || rows.stream().anyMatch(row -> !row.get(column).text().equals(Missing.NOT_KNOWN));
    }

    private String unknown() {
      List<String> unknown =
          IntStream.range(0, columns.size())
              .filter(column -> !isKept(column))
              .mapToObj(columns::get)
              .toList();
      return unknown.isEmpty()
          ? ""
          : Messages.of(
              "view.GrantTable.not-known-in-any-row",
              Map.of("toLowerCase", String.join("; ", unknown).toLowerCase(Locale.ROOT)));
    }
  }
}
