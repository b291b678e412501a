package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;

/** Reads a sheet once more to give certain rows back as they stand. */
final class SourceCells {

  private SourceCells() {}

  static List<SourceRow> of(InputFile file, SheetSource source, SortedSet<Integer> rows) {
    Optional<Headings> headings = HeadingSearch.in(file, source);
    List<SourceRow> found = new ArrayList<>();
    List<String> texts = headings.map(h -> cells(h.row(), 0)).orElse(List.of());
    List<String> fields = headings.map(h -> fields(h, source)).orElse(List.of());
    source.readToBreak(
        row -> {
          if (rows.contains(row.number)) {
            found.add(
                new SourceRow(
                    file.index(),
                    source.index(),
                    row.number,
                    texts,
                    fields,
                    cells(row, texts.size())));
          }
        });
    return found;
  }

  private static List<String> fields(Headings headings, SheetSource source) {
    RowJudge unheard = new RowJudge(0, 0, null);
    SheetClues clues = new SheetClues(source, headings.row().number, new TableEnd(null));
    Binding binding = Binding.of(headings, clues, unheard);
    TreeMap<Integer, String> byColumn = new TreeMap<>();
    binding.columns().forEach(bound -> byColumn.put(bound.column(), bound.field().name()));
    List<String> fields = new ArrayList<>();
    for (int i = 0; i < headings.row().width; i++) {
      fields.add(byColumn.getOrDefault(i, ""));
    }
    return List.copyOf(fields);
  }

  private static List<String> cells(RawRow row, int atLeast) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < Math.max(row.width, atLeast); i++) {
      cells.add(row.cell(i));
    }
    return List.copyOf(cells);
  }
}
