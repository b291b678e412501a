package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;

/**
 * Tests and models for readers who want them: all columns of a table.
 *
 * @param note what keeps its figures from being misread
 */
record OtherTables(String table, String sheet, String note) {

  private static final String ACROSS_ONE =
      "Limits that reach across 1: the records do not show a difference.";

  private static final List<OtherTables> ALL =
      List.of(
          new OtherTables(
              "group_tests",
              "Tests",
              "A large p does not show that groups are alike. Pairs are adjusted for their number."),
          new OtherTables("rate_ratios", "Rate ratios", ACROSS_ONE),
          new OtherTables(
              "mean_life_differences",
              "Mean life differences",
              "Limits that reach across 0: the records do not show a difference."),
          new OtherTables(
              "hazard_ratios",
              "Hazard ratios",
              ACROSS_ONE + " Above 1: fails sooner than the reference."),
          new OtherTables(
              "parametric_fits", "Fitted life", "Shape above 1: failure grows likelier with age."),
          new OtherTables(
              "fit_check", "Fit check", "A wide gap means that the fitted life misleads."),
          new OtherTables(
              "dating_comparison",
              "Dating of failures",
              "The same records, with failures dated in three ways."),
          new OtherTables(
              "sample_size",
              "What comparisons need",
              "How many failures it would take to tell two groups apart."));

  /** Adds a sheet for each of these tables that the run made. */
  static void addTo(Book book, TablePackage tables) {
    for (OtherTables other : ALL) {
      tables.table(other.table).ifPresent(found -> book.add(other.plan(tables, found)));
    }
  }

  private TableSheet plan(TablePackage tables, Table found) {
    return TableSheet.of(
            sheet,
            found.title(),
            List.of(note),
            Columns.of(tables, table).addAll(),
            Line.of(found.rows()))
        .withKeyColumns(2);
  }
}
