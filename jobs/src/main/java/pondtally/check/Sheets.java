package pondtally.check;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.record.Origin;

/** The sheets that were read, by place, and how files, sheets, rows and columns are called. */
final class Sheets {

  private final List<FileName> files;
  private final SortedMap<SheetPlace, SheetReport> reports = new TreeMap<>();

  Sheets(List<FileName> files, List<SheetReport> reports) {
    this.files = files;
    for (SheetReport report : reports) {
      if (this.reports.put(SheetPlace.of(report), report) != null) {
        throw new IllegalStateException("sheet reported twice: " + SheetPlace.of(report));
      }
    }
  }

  /** In file order. */
  Collection<SheetReport> inOrder() {
    return reports.values();
  }

  /** Every sheet that has a verdict must have been read. */
  void requireAll(Collection<SheetPlace> places) {
    if (!reports.keySet().containsAll(places)) {
      throw new IllegalStateException("verdict on a sheet without report: " + places);
    }
  }

  FileName file(int index) {
    return files.get(index);
  }

  /** Name of the sheet; empty for text files and for files that could not be opened. */
  String sheetName(Origin origin) {
    SheetReport report = reports.get(SheetPlace.of(origin));
    return report == null ? "" : report.sheetName();
  }

  /** The partner's own heading of a field; null where the sheet has none. */
  String heading(Origin origin, String field) {
    SheetReport report = reports.get(SheetPlace.of(origin));
    Map<String, String> headings = report == null ? Map.of() : report.headings();
    return field == null ? null : headings.get(field);
  }

  /** {@code north/installs.xlsx, sheet 2024, row 57}; shorter for a row of the same sheet. */
  String rowName(Origin row, Origin seenFrom) {
    String sheet = sheetName(row);
    if (SheetPlace.of(row).equals(SheetPlace.of(seenFrom))) {
      return "row %s of this %s".formatted(row.row(), sheet.isEmpty() ? "file" : "sheet");
    }
    String path = row.file() < files.size() ? files.get(row.file()).path() : "another file";
    return sheet.isEmpty()
        ? "%s, row %s".formatted(path, row.row())
        : "%s, sheet %s, row %s".formatted(path, sheet, row.row());
  }
}
