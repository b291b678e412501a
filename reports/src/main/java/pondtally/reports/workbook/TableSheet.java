package pondtally.reports.workbook;

import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.view.Line;

/**
 * What stands on a sheet that holds one table.
 *
 * @param name of the sheet, at most 31 characters
 * @param title stands in A1
 * @param notes a sentence or two each, between title and table
 * @param keyColumns columns that stay in sight when the sheet is moved sideways
 * @param lines in their order
 * @param charts beside or under the table
 * @param pages that it is printed on; 0 where it takes as many as it needs
 */
record TableSheet(
    String name,
    String title,
    List<String> notes,
    int keyColumns,
    List<TableColumn> columns,
    List<Line> lines,
    List<ChartPlan> charts,
    int pages) {

  static TableSheet of(
      String name, String title, List<String> notes, Columns columns, List<Line> lines) {
    return new TableSheet(name, title, notes, 1, columns.list(), lines, List.of(), 0);
  }

  TableSheet withKeyColumns(int number) {
    return new TableSheet(name, title, notes, number, columns, lines, charts, pages);
  }

  TableSheet withCharts(ChartPlan... plans) {
    List<ChartPlan> shown = Stream.of(plans).filter(this::shows).toList();
    return new TableSheet(name, title, notes, keyColumns, columns, lines, shown, pages);
  }

  /** A chart without any known figure would be an empty frame; the table says what is missing. */
  private boolean shows(ChartPlan plan) {
    return plan.series().stream()
        .anyMatch(series -> !series.sheet().isEmpty() || isKnown(series) || isComputed(series.y()));
  }

  private boolean isKnown(ChartPlan.Series series) {
    return lines.subList(series.from(), series.from() + series.count()).stream()
        .anyMatch(line -> line.number(series.y()).isPresent());
  }

  private boolean isComputed(String column) {
    return columns.stream().anyMatch(c -> c.column().equals(column) && c.derived());
  }

  /** Printed on so many upright pages, however long it is. */
  TableSheet onPages(int number) {
    return new TableSheet(name, title, notes, keyColumns, columns, lines, charts, number);
  }

  boolean hasTotals() {
    return columns.stream().anyMatch(TableColumn::totaled);
  }

  /** The same sheet with other lines, for a table that goes on in further sheets. */
  TableSheet part(String partName, List<String> partNotes, List<Line> partLines, boolean first) {
    return new TableSheet(
        partName,
        title,
        partNotes,
        keyColumns,
        columns,
        partLines,
        first ? charts : List.of(),
        pages);
  }
}
