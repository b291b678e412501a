package pondtally.sample;

import java.util.List;

/**
 * What should become of a sheet's rows.
 *
 * @param changed rows with a planted change of their own
 * @param converted further rows, otherwise used as they stand, with a cell converted by its
 *     heading's unit
 */
record RowAccount(
    String partner,
    String file,
    String sheet,
    String table,
    long rowsRead,
    long used,
    long changed,
    long converted,
    long setAside,
    long duplicate) {

  static final List<String> HEADINGS =
      List.of(
          "partner",
          "file",
          "sheet",
          "table",
          "rows_read",
          "used",
          "changed",
          "converted_by_heading",
          "set_aside",
          "duplicate");

  static RowAccount of(Sheet sheet) {
    List<Row> rows = sheet.rows().stream().filter(row -> !row.values().isEmpty()).toList();
    long changed = count(rows, Outcome.CHANGED);
    long setAside = count(rows, Outcome.SET_ASIDE);
    long duplicate = count(rows, Outcome.DUPLICATE);
    long converted =
        rows.stream()
            .filter(row -> row.counts() && row.outcome() != Outcome.CHANGED)
            .filter(
                row -> sheet.columns().stream().anyMatch(column -> column.convertsByHeading(row)))
            .count();
    long used = rows.size() - changed - setAside - duplicate - converted;
    return new RowAccount(
        sheet.partner().folder,
        sheet.file(),
        sheet.name(),
        sheet.table().code(),
        rows.size(),
        used,
        changed,
        converted,
        setAside,
        duplicate);
  }

  private static long count(List<Row> rows, Outcome outcome) {
    return rows.stream().filter(row -> row.outcome() == outcome).count();
  }

  List<String> line() {
    return List.of(
        partner,
        file,
        sheet,
        table,
        String.valueOf(rowsRead),
        String.valueOf(used),
        String.valueOf(changed),
        String.valueOf(converted),
        String.valueOf(setAside),
        String.valueOf(duplicate));
  }
}
