package pondtally.reports.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;

/**
 * A device or site that differs between two runs.
 *
 * @param subject {@code device} or {@code site}
 * @param kind {@code changed}, {@code new} or {@code gone}
 * @param columns what differs, with commas between
 * @param what each of these with its value before and after
 */
public record RecordChange(
    String subject, String id, String watershed, String kind, String columns, String what) {

  static List<RecordChange> of(TablePackage before, TablePackage after) {
    List<RecordChange> changes = new ArrayList<>();
    changes.addAll(of("device", "devices", "device_id", before, after));
    changes.addAll(of("site", "sites", "site_id", before, after));
    return changes;
  }

  private static List<RecordChange> of(
      String subject, String name, String id, TablePackage before, TablePackage after) {
    Map<String, Row> old = byId(before.table(name), id);
    Map<String, Row> now = byId(after.table(name), id);
    List<String> shared = Cells.shared(before.table(name), after.table(name), List.of(id));
    TreeSet<String> ids = new TreeSet<>(old.keySet());
    ids.addAll(now.keySet());
    List<RecordChange> changes = new ArrayList<>();
    for (String one : ids) {
      Row a = old.get(one);
      Row b = now.get(one);
      if (a == null || b == null) {
        String kind = a == null ? FigureChange.NEW : FigureChange.GONE;
        changes.add(new RecordChange(subject, one, watershed(a == null ? b : a), kind, "", ""));
      } else {
        List<String> differ = shared.stream().filter(c -> !Cells.same(a, b, c)).toList();
        if (!differ.isEmpty()) {
          changes.add(changed(subject, one, a, b, differ));
        }
      }
    }
    return changes;
  }

  private static RecordChange changed(
      String subject, String id, Row a, Row b, List<String> columns) {
    List<String> what =
        columns.stream()
            .map(
                column ->
                    column + ": " + Cells.shown(a, column) + " \u2192 " + Cells.shown(b, column))
            .toList();
    return new RecordChange(
        subject,
        id,
        watershed(b),
        FigureChange.CHANGED,
        String.join(", ", columns),
        String.join("; ", what));
  }

  private static String watershed(Row row) {
    return row.has("watershed") ? row.text("watershed") : "";
  }

  private static Map<String, Row> byId(Optional<Table> table, String id) {
    Map<String, Row> rows = new TreeMap<>();
    table
        .filter(t -> t.has(id))
        .ifPresent(t -> t.rows().forEach(row -> rows.put(row.text(id), row)));
    return rows;
  }
}
