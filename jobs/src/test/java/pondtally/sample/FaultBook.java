package pondtally.sample;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Plants faults in clean sheets and keeps account of each; no row gets two. */
final class FaultBook {
  private final List<Sheet> sheets;
  private final List<Planted> planted = new ArrayList<>();
  private final Map<String, Integer> visitCounts = new HashMap<>();

  FaultBook(List<Sheet> sheets) {
    this.sheets = sheets;
    for (Sheet sheet : sheets) {
      if (sheet.table() == Table.REVISITS) {
        sheet.rows().forEach(row -> visitCounts.merge(row.text("device_id"), 1, Integer::sum));
      }
    }
  }

  List<Planted> planted() {
    return planted;
  }

  List<Sheet> sheets(Table table) {
    return sheets.stream().filter(sheet -> sheet.table() == table).toList();
  }

  /** The partner's sheet of that table whose file or sheet name holds that text. */
  Sheet sheet(Partner partner, Table table, String part) {
    return sheets(table).stream()
        .filter(sheet -> sheet.partner() == partner && (sheet.file() + sheet.name()).contains(part))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "No " + table.code() + " of " + partner + " with " + part));
  }

  /** A row nothing was done to, drawn among those that fit. */
  Row pick(Sheet sheet, Predicate<Row> fits) {
    List<Row> rows = sheet.rows().stream().filter(row -> !row.isTouched()).filter(fits).toList();
    if (rows.isEmpty()) {
      throw new IllegalStateException("No row fits in " + sheet.file() + " " + sheet.name());
    }
    return Draw.of("pick", sheet.file(), sheet.name(), String.valueOf(planted.size())).pick(rows);
  }

  /**
   * A visit that found nothing and did nothing, of a device with several: its loss tells no
   * different story.
   */
  boolean quiet(Row row) {
    return row.text("condition").equals("working")
        && (row.text("action").isEmpty() || row.text("action").equals("none"))
        && !row.has("notes")
        && !row.has("wetland_acres")
        && visits(row.text("device_id")) >= 4;
  }

  /** How many visits the clean records have of that device. */
  int visits(String deviceId) {
    return visitCounts.getOrDefault(deviceId, 0);
  }

  /** Overwrites one cell. */
  void spoil(Sheet sheet, Row row, String field, Cell bad, FaultKind kind, Outcome outcome) {
    row.write(field, bad);
    row.mark(outcome);
    planted.add(new Planted(sheet, row, field, bad.text(), kind, outcome, null, null));
  }

  /** Notes a row as it stands. */
  void note(Sheet sheet, Row row, String field, FaultKind kind, Sheet twinSheet, Row twin) {
    row.mark(Outcome.NOTICE);
    String value = sheet.column(field).orElseThrow().cell(row).text();
    planted.add(new Planted(sheet, row, field, value, kind, Outcome.NOTICE, twinSheet, twin));
  }

  /** Notes a whole column, sheet or file. */
  void noteWhole(Sheet sheet, String field, String value, FaultKind kind, Outcome outcome) {
    planted.add(new Planted(sheet, null, field, value, kind, outcome, null, null));
  }

  /**
   * Adds a row in the order of that field; the fault is in {@code field}, or in the whole row if
   * that is null.
   */
  void insert(
      Sheet sheet,
      Row extra,
      String orderedBy,
      String field,
      FaultKind kind,
      Outcome outcome,
      Sheet twinSheet,
      Row twin) {
    if (!sheet.canHold(extra)) {
      throw new IllegalStateException(
          sheet.file() + " " + sheet.name() + " cannot hold " + extra.values());
    }
    int at = sheet.rows().size();
    while (at > 0 && comesAfter(sheet.rows().get(at - 1), extra, orderedBy)) {
      at--;
    }
    sheet.rows().add(at, extra);
    extra.mark(outcome);
    if (twin != null) {
      twin.mark(Outcome.USED);
    }
    String value = field == null ? "" : sheet.column(field).orElseThrow().cell(extra).text();
    planted.add(new Planted(sheet, extra, field, value, kind, outcome, twinSheet, twin));
  }

  private static boolean comesAfter(Row there, Row extra, String orderedBy) {
    return Comparator.<String>naturalOrder().compare(there.text(orderedBy), extra.text(orderedBy))
        > 0;
  }
}
