package pondtally.reports.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;

/**
 * A sheet of which other rows count than before.
 *
 * @param kind {@code new-rows}, {@code rows-gone}, or {@code corrected-rows}: as many rows as
 *     before, and other cells or another fate
 */
public record RowChange(
    String partner,
    String file,
    String sheet,
    String table,
    String kind,
    Integer rowsBefore,
    Integer countedBefore,
    Integer setAsideBefore,
    Integer duplicateBefore,
    Integer rowsAfter,
    Integer countedAfter,
    Integer setAsideAfter,
    Integer duplicateAfter) {

  static final String NEW_ROWS = "new-rows";
  static final String ROWS_GONE = "rows-gone";
  static final String CORRECTED_ROWS = "corrected-rows";

  private record Counts(int read, int counted, int setAside, int duplicate) {
    static final Counts NONE = new Counts(0, 0, 0, 0);

    static Counts of(Row row) {
      return new Counts(
          (int) row.count("rows_read"),
          (int) (row.count("used") + row.count("changed")),
          (int) row.count("set_aside"),
          (int) row.count("duplicate"));
    }
  }

  private record Place(String partner, String file, String sheet, String table)
      implements Comparable<Place> {
    @Override
    public int compareTo(Place other) {
      return List.of(partner, file, sheet, table)
          .toString()
          .compareTo(List.of(other.partner, other.file, other.sheet, other.table).toString());
    }
  }

  /**
   * The sheets whose rows differ in number or fate, or that lie in a file whose bytes differ. A
   * workbook with several sheets counts as a whole: only its bytes are known.
   */
  static List<RowChange> of(TablePackage before, TablePackage after, List<FileChange> files) {
    Map<Place, Counts> old = counts(before);
    Map<Place, Counts> now = counts(after);
    Set<String> differ = new HashSet<>();
    files.forEach(file -> differ.add(file.file()));
    List<RowChange> changes = new ArrayList<>();
    TreeMap<Place, Counts> all = new TreeMap<>(old);
    all.putAll(now);
    for (Place place : all.keySet()) {
      Counts a = old.getOrDefault(place, Counts.NONE);
      Counts b = now.getOrDefault(place, Counts.NONE);
      if (!a.equals(b) || differ.contains(place.file())) {
        changes.add(change(place, a, b));
      }
    }
    return changes;
  }

  private static RowChange change(Place place, Counts a, Counts b) {
    String kind = b.read() > a.read() ? NEW_ROWS : b.read() < a.read() ? ROWS_GONE : CORRECTED_ROWS;
    return new RowChange(
        place.partner(),
        place.file(),
        place.sheet(),
        place.table(),
        kind,
        a.read(),
        a.counted(),
        a.setAside(),
        a.duplicate(),
        b.read(),
        b.counted(),
        b.setAside(),
        b.duplicate());
  }

  private static Map<Place, Counts> counts(TablePackage tables) {
    Map<Place, Counts> counts = new TreeMap<>();
    tables
        .table("row_account")
        .filter(table -> table.has("partner") && table.has("file") && table.has("sheet"))
        .ifPresent(
            table ->
                table
                    .rows()
                    .forEach(
                        row ->
                            counts.put(
                                new Place(
                                    row.text("partner"),
                                    row.text("file"),
                                    row.text("sheet"),
                                    row.text("table")),
                                Counts.of(row))));
    return counts;
  }
}
