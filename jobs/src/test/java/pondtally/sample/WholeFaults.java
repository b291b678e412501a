package pondtally.sample;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/** Finds what shows only over the whole program, once every other fault is planted. */
final class WholeFaults {
  private final FaultBook book;

  WholeFaults(FaultBook book) {
    this.book = book;
  }

  void find(List<Sheet> sheets) {
    headingsWithUnits(sheets);
    Set<String> visited = new HashSet<>();
    Set<String> costed = new HashSet<>();
    forCounted(Table.REVISITS, (sheet, row) -> visited.add(row.text("device_id")));
    costs(costed);
    forCounted(Table.INSTALLS, (sheet, row) -> device(sheet, row, visited, costed));
    ponds();
  }

  private void headingsWithUnits(List<Sheet> sheets) {
    for (Sheet sheet : sheets) {
      for (Column column : sheet.columns()) {
        long cells = sheet.rows().stream().filter(column::convertsByHeading).count();
        if (cells > 0) {
          book.noteWhole(
              sheet,
              column.field(),
              String.valueOf(cells),
              FaultKind.UNIT_IN_HEADING,
              Outcome.CHANGED);
        }
      }
    }
  }

  private void costs(Set<String> costed) {
    forCounted(Table.MATERIALS, (sheet, row) -> costed.add(row.text("device_id")));
    Map<Table, List<String>> fields = new HashMap<>();
    fields.put(Table.INSTALLS, List.of("labor_hours", "volunteer_hours", "install_cost_usd"));
    fields.put(Table.REVISITS, List.of("hours", "volunteer_hours", "cost_usd"));
    fields.forEach(
        (table, names) ->
            forCounted(
                table,
                (sheet, row) -> {
                  if (names.stream().anyMatch(name -> row.has(name) && readable(row, name))) {
                    costed.add(row.text("device_id"));
                  }
                }));
  }

  private static boolean readable(Row row, String field) {
    return !row.isWritten(field) || row.written(field).text().matches("[0-9.]+");
  }

  private void device(Sheet sheet, Row row, Set<String> visited, Set<String> costed) {
    String id = row.text("device_id");
    if (costed.add(id)) {
      book.note(sheet, row, "device_id", FaultKind.DEVICE_WITHOUT_COST, null, null);
    }
    if (visited.add(id)) {
      book.note(sheet, row, "device_id", FaultKind.DEVICE_NEVER_VISITED, null, null);
    }
  }

  private void ponds() {
    Map<String, String> pondOfSite = new HashMap<>();
    Map<String, String> siteOfDevice = new HashMap<>();
    Set<String> measured = new HashSet<>();
    forCounted(Table.SITES, (sheet, row) -> pondOfSite.put(row.text("site_id"), pond(row)));
    forCounted(
        Table.INSTALLS,
        (sheet, row) -> siteOfDevice.put(row.text("device_id"), row.text("site_id")));
    forCounted(
        Table.SITES, (sheet, row) -> addIf(row.has("wetland_acres_before"), pond(row), measured));
    forCounted(
        Table.AREAS,
        (sheet, row) ->
            measured.add(
                row.has("pond_id") ? row.text("pond_id") : pondOfSite.get(row.text("site_id"))));
    forCounted(
        Table.REVISITS,
        (sheet, row) -> {
          boolean read = row.has("wetland_acres") && !row.text("wetland_acres").isEmpty();
          addIf(
              read && !unreadable(row),
              pondOfSite.get(siteOfDevice.get(row.text("device_id"))),
              measured);
        });
    forCounted(
        Table.SITES,
        (sheet, row) -> {
          if (measured.add(pond(row))) {
            book.note(sheet, row, "site_id", FaultKind.AREA_NEVER_MEASURED, null, null);
          }
        });
  }

  private static boolean unreadable(Row row) {
    return row.isWritten("wetland_acres") && !row.written("wetland_acres").text().endsWith(" ha");
  }

  private static String pond(Row row) {
    return row.has("pond_id") ? row.text("pond_id") : row.text("site_id");
  }

  private static void addIf(boolean holds, String pond, Set<String> measured) {
    if (holds) {
      measured.add(pond);
    }
  }

  private void forCounted(Table table, BiConsumer<Sheet, Row> each) {
    for (Sheet sheet : book.sheets(table)) {
      List.copyOf(sheet.rows()).stream()
          .filter(Row::counts)
          .filter(row -> !row.values().isEmpty())
          .forEach(row -> each.accept(sheet, row));
    }
  }
}
