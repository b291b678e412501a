package pondtally.reports.edition;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.view.Line;

/** The additive figures of a table as slices, over groups, years or another key column. */
final class Slices {

  /** Figures that say most about a group: its size, its money, its wetland. */
  private static final Set<String> MAIN =
      Set.of("devices", "device_years", "total_usd", "build_usd", "acre_years", "cost_usd");

  private Slices() {}

  /**
   * One slice for each additive column and each value of the other key columns.
   *
   * @param over key column that the slices run along
   */
  static List<Slice> of(Table table, Predicate<Row> published, String over) {
    List<String> rest = new ArrayList<>(List.of("grouping"));
    rest.addAll(PublicColumns.ALSO_KEY.getOrDefault(table.name(), List.of()));
    if (!over.equals("group")) {
      rest.add("group");
    }
    rest.remove(over);
    Function<Row, List<String>> key = row -> rest.stream().map(row::text).toList();
    Map<List<String>, List<Row>> parts =
        table.rows().stream()
            .filter(published)
            .filter(row -> !isTotal(row, over))
            .collect(Collectors.groupingBy(key));
    List<Slice> slices = new ArrayList<>();
    for (List<Row> rows : parts.values()) {
      for (String column : PublicColumns.ADDITIVE.getOrDefault(table.name(), List.of())) {
        slices.add(slice(rows, over, column));
      }
    }
    return slices;
  }

  private static boolean isTotal(Row row, String over) {
    return over.equals("group") ? row.text("grouping").equals("all") : row.text(over).equals("all");
  }

  private static Slice slice(List<Row> rows, String over, String column) {
    Map<String, Double> values = new TreeMap<>();
    Set<String> known = new HashSet<>();
    for (Row row : rows) {
      OptionalDouble value = Line.of(row).number(column);
      values.put(row.text(over), Math.max(0, value.orElse(0)));
      if (value.isPresent()) {
        known.add(row.text(over));
      }
    }
    return new Slice(rows.get(0).text("grouping"), MAIN.contains(column), values, known);
  }
}
