package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.DateText;
import pondtally.reports.text.Messages;

/** What charts ask of the tables. */
final class ChartSource {

  private final TablePackage tables;

  ChartSource(TablePackage tables) {
    this.tables = tables;
  }

  /** Rows of a table in file order; none when the run did not make it. */
  List<Row> rows(String table) {
    return tables.table(table).map(Table::rows).orElse(List.of());
  }

  /** Rows of one grouping, in file order. */
  List<Row> rows(String table, String grouping) {
    return rows(table).stream().filter(row -> row.text("grouping").equals(grouping)).toList();
  }

  /** Rows of one grouping that stand for the whole record and not for one year. */
  List<Row> wholeRecord(String table, String grouping) {
    return rows(table, grouping).stream().filter(row -> row.text("year").equals("all")).toList();
  }

  /** Rows of one grouping by group, in file order. */
  Map<String, List<Row>> groups(String table, String grouping) {
    Map<String, List<Row>> groups = new LinkedHashMap<>();
    for (Row row : rows(table, grouping)) {
      groups.computeIfAbsent(row.text("group"), group -> new ArrayList<>()).add(row);
    }
    return groups;
  }

  /** Whether a table has a column that not every version of it has. */
  boolean hasColumn(String table, String column) {
    return tables
        .table(table)
        .map(found -> found.fields().stream().anyMatch(field -> field.name().equals(column)))
        .orElse(false);
  }

  /** A fact about the run; empty if there is none. */
  String fact(String name) {
    return tables.fact(name);
  }

  /** Groups with fewer devices than this are drawn hollow and never singled out; 0 if not set. */
  long groupsBelow() {
    String text = tables.fact("groups_below");
    return text.isEmpty() ? 0 : Long.parseLong(text);
  }

  /** Whose data, and up to when: {@code Upper Region. Data to March 31, 2026.} */
  String cut() {
    String region = tables.fact("region");
    String asOf =
        Messages.of(
            "chart.ChartSource.data-to", Map.of("asOf", DateText.readable(tables.fact("as_of"))));
    return region.isEmpty() ? asOf : region + ". " + asOf;
  }

  /**
   * Of rows by year the one in which the reporting period ends, else the last; none without rows.
   */
  Optional<Row> inPeriod(List<Row> years) {
    String year = year(tables.fact("period_to"));
    return years.stream()
        .filter(row -> row.text("year").equals(year))
        .findFirst()
        .or(() -> years.stream().reduce((first, last) -> last));
  }

  /**
   * A warning where the data cut lies after the reporting period, so that the last year is short.
   */
  String incomplete() {
    String cut = tables.fact("as_of");
    return cut.isEmpty() || cut.compareTo(tables.fact("period_to")) <= 0
        ? ""
        : Messages.of("chart.ChartSource.the-last-year-is-not-over");
  }

  private static String year(String isoDate) {
    return isoDate.length() < 4 ? "" : isoDate.substring(0, 4);
  }

  /** What counts as a failure in this run, for the foot of a chart. */
  String failureDefinition() {
    String reduced =
        tables.fact("failure").contains("reduced")
            ? Messages.of("chart.ChartSource.failure-a-visit-finds-the-device")
            : Messages.of("chart.ChartSource.failure-a-visit-finds-the-device-2");
    return switch (tables.fact("failure_dated")) {
      case "discovery" ->
          Messages.of("chart.ChartSource.dated-to-that-visit", Map.of("reduced", reduced));
      case "midpoint", "interval" ->
          Messages.of(
              "chart.ChartSource.dated-halfway-between-that-visit-and", Map.of("reduced", reduced));
      default -> reduced + ".";
    };
  }
}
