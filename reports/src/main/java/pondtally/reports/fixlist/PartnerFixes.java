package pondtally.reports.fixlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Rows;

/**
 * What one partner can correct.
 *
 * @param wide issues about a whole column, sheet or file, and issues whose row is not in the tables
 * @param blocks one for each sheet, in the order of file and sheet
 */
record PartnerFixes(String partner, List<Issue> wide, List<SheetBlock> blocks) {

  boolean isEmpty() {
    return wide.isEmpty() && blocks.isEmpty();
  }

  long rows(int rank) {
    return blocks.stream()
        .flatMap(block -> block.rows().stream())
        .filter(row -> row.rank() == rank)
        .count();
  }

  /** All partners that sent anything, by name. */
  static List<PartnerFixes> all(TablePackage tables) {
    Map<String, List<Row>> issues = byPartner(Rows.of(tables, "data_issues").list());
    Map<String, List<Row>> cells = byPartner(Rows.of(tables, "source_rows").list());
    TreeSet<String> partners = new TreeSet<>(issues.keySet());
    Rows.of(tables, "row_account").list().forEach(row -> partners.add(row.text("partner")));
    return partners.stream()
        .map(p -> of(p, issues.getOrDefault(p, List.of()), cells.getOrDefault(p, List.of())))
        .toList();
  }

  private static Map<String, List<Row>> byPartner(List<Row> rows) {
    Map<String, List<Row>> by = new LinkedHashMap<>();
    rows.forEach(row -> by.computeIfAbsent(row.text("partner"), p -> new ArrayList<>()).add(row));
    return by;
  }

  private static PartnerFixes of(String partner, List<Row> issueRows, List<Row> cells) {
    Map<Place, SheetCells> sheets = new TreeMap<>(Place.ORDER);
    for (Row cell : cells) {
      sheets.computeIfAbsent(Place.of(cell), p -> new SheetCells()).add(cell);
    }
    List<Issue> wide = new ArrayList<>();
    Map<Place, TreeMap<Integer, List<Issue>>> issues = new TreeMap<>(Place.ORDER);
    for (Row row : issueRows) {
      Issue issue = Issue.of(row);
      Place place = Place.of(row);
      if (issue.isDone()) {
        continue;
      }
      if (sheets.containsKey(place) && sheets.get(place).holds(issue.row())) {
        issues
            .computeIfAbsent(place, p -> new TreeMap<>())
            .computeIfAbsent(issue.row(), r -> new ArrayList<>())
            .add(issue);
      } else {
        wide.add(issue);
      }
    }
    wide.sort(Comparator.comparingInt(Issue::rank));
    List<SheetBlock> blocks = new ArrayList<>();
    issues.forEach(
        (place, rows) -> blocks.add(sheets.get(place).block(place.file(), place.sheet(), rows)));
    return new PartnerFixes(partner, wide, blocks);
  }

  /** A sheet of a file. */
  private record Place(String file, String sheet) {

    static final Comparator<Place> ORDER =
        Comparator.comparing(Place::file).thenComparing(Place::sheet);

    static Place of(Row row) {
      return new Place(row.text("file"), row.text("sheet"));
    }
  }
}
