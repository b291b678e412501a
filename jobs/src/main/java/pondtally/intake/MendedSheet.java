package pondtally.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * A sheet some of whose rows are replaced by corrections, as far as they still stand as they did.
 */
final class MendedSheet implements SheetSource {

  private final SheetSource source;
  private final Map<Integer, List<FixRow>> byRow = new TreeMap<>();
  private final Set<Integer> met = new HashSet<>();
  private final Map<FixRow, String> refused = new LinkedHashMap<>();

  MendedSheet(SheetSource source, List<FixRow> rows) {
    this.source = source;
    rows.forEach(row -> byRow.computeIfAbsent(row.key().row(), r -> new ArrayList<>()).add(row));
  }

  @Override
  public int index() {
    return source.index();
  }

  @Override
  public String name() {
    return source.name();
  }

  @Override
  public boolean isText() {
    return source.isText();
  }

  @Override
  public boolean countsFrom1904() {
    return source.countsFrom1904();
  }

  @Override
  public SheetNotes read(Consumer<RawRow> rows) throws IOException {
    SheetNotes notes =
        source.read(
            row -> {
              mend(row);
              rows.accept(row);
            });
    byRow.forEach(
        (row, fixes) -> {
          if (!met.contains(row)) {
            fixes.forEach(fix -> refused.put(fix, "there is no such row any more"));
          }
        });
    return notes;
  }

  /** Corrections that could not be used, with the reason. */
  Map<FixRow, String> refused() {
    return refused;
  }

  /** Applies corrections one after the other: each names the row as the one before it left it. */
  private void mend(RawRow row) {
    List<FixRow> fixes = byRow.get(row.number);
    if (fixes == null) {
      return;
    }
    met.add(row.number);
    List<FixRow> left = new ArrayList<>(fixes);
    boolean isGoingOn = true;
    while (isGoingOn) {
      String print = FixPrint.of(row.cells());
      List<FixRow> fitting = left.stream().filter(f -> f.key().print().equals(print)).toList();
      fitting.forEach(fix -> replace(row, fix));
      isGoingOn = left.removeAll(fitting);
    }
    for (FixRow fix : left) {
      if (!FixPrint.of(fix.cells()).equals(FixPrint.of(row.cells()))) {
        refused.put(fix, "the row has changed since the list was written");
      }
    }
  }

  /** Only cells that differ are replaced, so that the others keep their type. */
  private static void replace(RawRow row, FixRow fix) {
    List<MendedCell> mended = new ArrayList<>(row.mended);
    int width = Math.max(row.width, fix.cells().size());
    for (int i = 0; i < width; i++) {
      String before = row.cell(i);
      String after = i < fix.cells().size() ? fix.cells().get(i) : "";
      if (!FixPrint.same(before, after)) {
        row.set(i, after, false);
        row.cutColumn = row.cutColumn == i ? -1 : row.cutColumn;
        mended.add(new MendedCell(i, before, after, fix.where()));
      }
    }
    row.hasStrayQuote = false;
    row.mended = List.copyOf(mended);
  }
}
