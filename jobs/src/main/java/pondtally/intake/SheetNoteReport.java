package pondtally.intake;

import java.util.List;
import java.util.Map;
import pondtally.check.Severity;

/** Puts into words what a source noticed beside the cells of a sheet. */
final class SheetNoteReport {

  private final RowJudge judge;
  private final Headings headings;
  private final Binding binding;

  /**
   * @param headings null: none were found
   * @param binding null likewise
   */
  SheetNoteReport(RowJudge judge, Headings headings, Binding binding) {
    this.judge = judge;
    this.headings = headings;
    this.binding = binding;
  }

  void report(SheetNotes notes) {
    if (notes.isGuessedEncoding()) {
      about(
          null,
          null,
          IntakeRule.ENCODING_GUESSED,
          "The text is not UTF-8 and was read as Windows-1252. Check letters with accents, or save"
              + " the file as UTF-8.");
    }
    if (notes.isHidden()) {
      about(null, null, IntakeRule.HIDDEN_SHEET, "The sheet is hidden. It was read all the same.");
    }
    if (!notes.hiddenRows().message().isEmpty()) {
      about(null, null, IntakeRule.HIDDEN_ROWS, notes.hiddenRows().message());
    }
    if (headings != null) {
      notes.formulas().forEach(this::formulas);
      notes.formulasWithoutValue().forEach(this::formulasWithoutValue);
      for (Map.Entry<Integer, List<String>> merged : notes.merged().entrySet()) {
        if (merged.getKey() == headings.row().number) {
          merged.getValue().forEach(this::mergedHeading);
        }
      }
    }
  }

  private void formulas(int column, int cells) {
    about(
        column,
        IntakeRule.FORMULA_VALUE,
        cells == 1
            ? "1 cell holds a formula; the value last stored for it was read."
            : "%s cells hold formulas; the values last stored for them were read."
                .formatted(cells));
  }

  private void formulasWithoutValue(int column, int cells) {
    about(
        column,
        IntakeRule.FORMULA_VALUE,
        "%s a formula without a stored value, read as empty. Open the workbook, save it and run again."
            .formatted(cells == 1 ? "1 cell holds" : cells + " cells hold"));
  }

  private void mergedHeading(String range) {
    about(
        null,
        null,
        IntakeRule.MERGED_HEADING,
        "The cells %s in the row of headings are merged; the heading was taken for the first column only. Give each column a heading of its own, or name it by its place in columns.yaml."
            .formatted(range));
  }

  private void about(int column, IntakeRule rule, String message) {
    for (BoundColumn bound : binding.columns()) {
      if (bound.column() == column) {
        about(bound.field().name(), null, rule, message);
        return;
      }
    }
  }

  private void about(String field, String column, IntakeRule rule, String message) {
    judge.aboutSheet(field, column, null, Severity.NOTICE, rule, message, "");
  }
}
