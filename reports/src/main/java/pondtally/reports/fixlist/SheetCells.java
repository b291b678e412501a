package pondtally.reports.fixlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.reports.table.Row;

/** The cells of the rows of one sheet that have an issue, as the partner wrote them. */
final class SheetCells {

  private final SortedMap<Integer, String> headings = new TreeMap<>();
  private final SortedMap<Integer, String> fields = new TreeMap<>();
  private final Map<Integer, TreeMap<Integer, String>> values = new TreeMap<>();
  private final Map<Integer, String> keys = new TreeMap<>();
  private String table = "";

  void add(Row cell) {
    int position = (int) cell.count("position");
    int row = (int) cell.count("row");
    table = cell.text("table");
    headings.putIfAbsent(position, cell.text("heading"));
    if (!cell.text("field").isEmpty()) {
      fields.putIfAbsent(position, cell.text("field"));
    }
    values.computeIfAbsent(row, r -> new TreeMap<>()).put(position, cell.text("value"));
    keys.put(row, cell.text("row_key"));
  }

  /** Whether the cells of a row are known; false for 0, which means no row. */
  boolean holds(int row) {
    return values.containsKey(row);
  }

  /** The rows that have an issue, those that are not counted first. */
  SheetBlock block(String file, String sheet, Map<Integer, List<Issue>> issues) {
    List<FaultyRow> rows = new ArrayList<>();
    issues.forEach(
        (number, found) ->
            rows.add(new FaultyRow(number, keys.get(number), values.get(number), found)));
    rows.sort(Comparator.comparingInt(FaultyRow::rank).thenComparingInt(FaultyRow::number));
    return new SheetBlock(file, sheet, table, headings, fields, rows);
  }
}
