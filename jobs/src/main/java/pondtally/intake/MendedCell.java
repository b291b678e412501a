package pondtally.intake;

import java.util.List;
import pondtally.schema.FieldSchema;

/**
 * A cell that a list of corrected rows replaced.
 *
 * @param column place in the sheet, from 0
 * @param before as it stands in the file
 * @param after as it was read
 * @param where where the correction stands
 */
record MendedCell(int column, String before, String after, String where) {

  /** Reports the corrected cells of a row, which counts as changed. */
  static void tell(List<MendedCell> cells, Binding binding, RowJudge judge) {
    for (MendedCell cell : cells) {
      judge.mended(cell.field(binding), cell.heading(binding), cell.before, cell.message());
    }
  }

  private FieldSchema field(Binding binding) {
    return binding.columns().stream()
        .filter(bound -> bound.column() == column)
        .map(BoundColumn::field)
        .findFirst()
        .orElse(null);
  }

  private String heading(Binding binding) {
    Binding.Ignored ignored = binding.ignored().get(column);
    return ignored == null ? "" : ignored.heading();
  }

  private String message() {
    return "%s was corrected to %s (%s)."
        .formatted(
            Blank.clean(before).isEmpty() ? "An empty cell" : Shown.value(before),
            Blank.clean(after).isEmpty() ? "an empty one" : Shown.value(after),
            where);
  }
}
