package pondtally.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A list of rows to correct that came back.
 *
 * @param changed rows that somebody changed
 * @param untouched number of rows left as they were
 */
record FixList(InputFile file, List<FixRow> changed, int untouched) {

  /** Reads a file as such a list; empty where it is none, or cannot be read. */
  static Optional<FixList> of(InputFile file) {
    if (!FixScan.holdsMark(file)) {
      return Optional.empty();
    }
    try (Sheets sheets = Sheets.open(file)) {
      List<FixRow> changed = new ArrayList<>();
      int untouched = 0;
      boolean isList = false;
      for (SheetSource source : sheets.all()) {
        Page page = new Page(file, source.name());
        source.read(page::row);
        isList |= page.keyAt >= 0;
        changed.addAll(page.changed);
        untouched += page.untouched;
      }
      return isList ? Optional.of(new FixList(file, changed, untouched)) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** One sheet: rows count once the column of the keys is known. */
  private static final class Page {

    private final InputFile file;
    private final String sheet;
    private final List<FixRow> changed = new ArrayList<>();
    private int untouched;
    private int keyAt = -1;

    Page(InputFile file, String sheet) {
      this.file = file;
      this.sheet = sheet;
    }

    void row(RawRow row) {
      if (keyAt < 0) {
        keyAt = markAt(row);
      } else {
        FixKey.parse(row.cell(keyAt)).ifPresent(key -> add(key, row));
      }
    }

    private static int markAt(RawRow row) {
      for (int i = 0; i < row.width; i++) {
        if (Blank.clean(row.cell(i)).equals(FixMarks.FIX_LIST)) {
          return i;
        }
      }
      return -1;
    }

    private void add(FixKey key, RawRow row) {
      List<String> cells = new ArrayList<>();
      for (int i = keyAt + 1; i < row.width; i++) {
        cells.add(row.cell(i));
      }
      if (FixPrint.of(cells).equals(key.print())) {
        untouched++;
      } else {
        changed.add(new FixRow(key, List.copyOf(cells), file.path(), sheet, row.number));
      }
    }
  }
}
