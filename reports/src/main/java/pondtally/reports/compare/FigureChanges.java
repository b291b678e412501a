package pondtally.reports.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;

/** Compares result tables row by row and cell by cell. */
final class FigureChanges {

  /**
   * Not figures, or figures whose rows cannot be paired: points of curves stand at other ages as
   * soon as a device is added, and what they say stands in the summaries.
   */
  private static final Set<String> LEFT_OUT =
      Set.of(
          "row_account",
          "data_issues",
          "source_rows",
          "devices",
          "sites",
          "contributions",
          "survival_curves",
          "cumulative_incidence",
          "repeat_failures",
          "worklist",
          "changes",
          "restated",
          "changed_settings",
          "changed_files",
          "changed_rows",
          "changed_records");

  /** Sentences about other cells of the same row. */
  private static final Set<String> SENTENCES = Set.of("statement", "note", "reason");

  private final Causes causes;
  private final List<FigureChange> changes = new ArrayList<>();
  private int compared;

  FigureChanges(Causes causes) {
    this.causes = causes;
  }

  /** Number of figures that both runs have. */
  int compared() {
    return compared;
  }

  /** All figures that differ, in the order of the tables. */
  List<FigureChange> of(TablePackage before, TablePackage after) {
    for (Table table : after.tables()) {
      Optional<Table> old = before.table(table.name());
      if (old.isPresent() && !LEFT_OUT.contains(table.name())) {
        compare(old.get(), table);
      }
    }
    return changes;
  }

  private void compare(Table before, Table after) {
    List<String> key = after.key().isEmpty() ? before.key() : after.key();
    if (key.isEmpty() || !key.stream().allMatch(c -> before.has(c) && after.has(c))) {
      return;
    }
    Map<List<String>, Row> old = byKey(before, key);
    Map<List<String>, Row> now = byKey(after, key);
    List<Field> fields =
        after.fields().stream()
            .filter(f -> before.has(f.name()) && !key.contains(f.name()))
            .filter(f -> !SENTENCES.contains(f.name()))
            .toList();
    now.forEach(
        (cells, row) -> {
          Place place = new Place(after.name(), key, cells);
          if (old.containsKey(cells)) {
            fields.forEach(field -> compare(place, field, old.get(cells), row));
          } else {
            whole(place, FigureChange.NEW);
          }
        });
    old.keySet().stream()
        .filter(cells -> !now.containsKey(cells))
        .forEach(cells -> whole(new Place(after.name(), key, cells), FigureChange.GONE));
  }

  private static Map<List<String>, Row> byKey(Table table, List<String> key) {
    Map<List<String>, Row> rows = new LinkedHashMap<>();
    table.rows().forEach(row -> rows.put(key.stream().map(row::text).toList(), row));
    return rows;
  }

  private void compare(Place place, Field field, Row before, Row after) {
    compared++;
    if (Cells.same(before, after, field.name())) {
      return;
    }
    String a = before.text(field.name());
    String b = after.text(field.name());
    Double x = Cells.number(a);
    Double y = Cells.number(b);
    Double difference = x == null || y == null ? null : (Double) (y - x);
    Double relative = difference == null || x == 0 ? null : (Double) (difference / Math.abs(x));
    Causes.Cause cause = causes.of(place.table(), place.grouping(), place.group(), field);
    changes.add(
        new FigureChange(
            place.table(),
            place.grouping(),
            place.group(),
            place.rest(),
            field.name(),
            field.unit(),
            FigureChange.CHANGED,
            x,
            y,
            difference,
            relative,
            x == null || y == null ? a : "",
            x == null || y == null ? b : "",
            cause.codes(),
            cause.words()));
  }

  private void whole(Place place, String kind) {
    Causes.Cause cause = causes.of(place.table(), place.grouping(), place.group(), null);
    changes.add(
        new FigureChange(
            place.table(),
            place.grouping(),
            place.group(),
            place.rest(),
            "",
            "",
            kind,
            null,
            null,
            null,
            null,
            "",
            "",
            cause.codes(),
            cause.words()));
  }

  /** A row of a table. */
  private record Place(String table, List<String> key, List<String> cells) {

    private String cell(String column) {
      int at = key.indexOf(column);
      return at < 0 ? "" : cells.get(at);
    }

    String grouping() {
      return cell("grouping");
    }

    String group() {
      return cell("group");
    }

    String rest() {
      List<String> rest = new ArrayList<>();
      for (int i = 0; i < key.size(); i++) {
        if (!key.get(i).equals("grouping") && !key.get(i).equals("group")) {
          rest.add(key.get(i) + "=" + cells.get(i));
        }
      }
      return rest.stream().collect(Collectors.joining("; "));
    }
  }
}
