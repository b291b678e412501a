package pondtally.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pondtally.schema.FieldSchema;
import pondtally.schema.HeadingMatch;

/**
 * Which column of a sheet is read as which field. Made once for a sheet; says what it leaves out.
 *
 * @param columns in the order of the sheet
 * @param ignored columns up to that width that are not read
 * @param width how many columns the headings reach, those named by their place included
 * @param headed how many the headings themselves reach
 */
record Binding(List<BoundColumn> columns, Map<Integer, Ignored> ignored, int width, int headed) {

  /**
   * A column that is not read.
   *
   * @param twin the field that it stands for and that another column was taken for; null: none
   * @param usedColumn that other column
   */
  record Ignored(String heading, FieldSchema twin, int usedColumn) {}

  private record Candidate(int column, String heading, HeadingMatch match, boolean isNamed) {}

  static Binding of(Headings headings, SheetClues clues, RowJudge judge) {
    RawRow row = headings.row();
    SheetMap map = headings.map();
    Converters converters = new Converters(headings.table(), clues, map, judge);
    Map<String, List<Candidate>> byField = new TreeMap<>();
    TreeMap<Integer, Ignored> ignored = new TreeMap<>();
    int width = 0;
    int headed = 0;
    for (int i = 0; i < map.widthOf(row); i++) {
      String heading = Blank.clean(row.cell(i));
      Optional<HeadingMatch> match = map.match(headings.table(), i, heading);
      width = heading.isEmpty() && match.isEmpty() ? width : i + 1;
      headed = heading.isEmpty() ? headed : i + 1;
      if (match.isPresent()) {
        byField
            .computeIfAbsent(match.get().field().name(), name -> new ArrayList<>())
            .add(new Candidate(i, heading, match.get(), map.names(i, heading)));
      } else if (!map.names(i, heading)) {
        ignored.put(i, new Ignored(heading, null, i));
      }
    }
    ignored.tailMap(width).clear();
    List<BoundColumn> columns = new ArrayList<>();
    byField.values().forEach(same -> columns.add(bind(same, ignored, converters)));
    columns.sort(Comparator.comparingInt(BoundColumn::column));
    AbsentHeadings.report(headings, byField.keySet(), judge);
    return new Binding(columns, ignored, width, headed);
  }

  /**
   * Binds the best of the columns that stand for one field: one that columns.yaml names first, then
   * the field's own name, then the order.
   */
  private static BoundColumn bind(
      List<Candidate> same, Map<Integer, Ignored> ignored, Converters converters) {
    Candidate best =
        same.stream()
            .filter(Candidate::isNamed)
            .findFirst()
            .or(() -> same.stream().filter(other -> other.match().isOwnName()).findFirst())
            .orElse(same.get(0));
    FieldSchema field = best.match().field();
    for (Candidate other : same) {
      if (other.column() != best.column()) {
        ignored.put(other.column(), new Ignored(other.heading(), field, best.column()));
      }
    }
    CellConverter converter = converters.of(best.column(), best.match());
    String heading =
        best.heading().isEmpty() ? NamedColumn.placeName(best.column()) : best.heading();
    return new BoundColumn(best.column(), field, heading, converter);
  }

  /** The partner's own heading for each field, by the field's name. */
  Map<String, String> headingByField() {
    Map<String, String> headings = new TreeMap<>();
    columns.forEach(column -> headings.put(column.field().name(), column.heading()));
    return headings;
  }
}
