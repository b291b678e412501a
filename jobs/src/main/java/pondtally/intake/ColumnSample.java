package pondtally.intake;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A column of which it is not known what it holds.
 *
 * @param heading empty: it has none
 * @param cells what stands in its first rows, each once
 */
record ColumnSample(String heading, Set<String> cells) {

  /** All columns below the headings. */
  static List<ColumnSample> of(List<String> headings, List<SourceRow> rows) {
    List<ColumnSample> columns = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      String heading = Blank.clean(headings.get(i));
      Set<String> cells = new LinkedHashSet<>();
      for (SourceRow row : rows) {
        String cell = i < row.cells().size() ? Blank.clean(row.cells().get(i)) : "";
        if (!cell.isEmpty() && !cell.equals(heading) && !Blank.saysNothing(cell)) {
          cells.add(cell);
        }
      }
      columns.add(new ColumnSample(heading, cells));
    }
    return columns;
  }

  /** The first of its cells, as they are shown beside a guess. */
  String shown(int most) {
    return cells.isEmpty()
        ? "empty"
        : "holds " + String.join(", ", cells.stream().limit(most).map(Shown::value).toList());
  }
}
