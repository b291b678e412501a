package pondtally.reports.workbook;

import java.util.List;
import java.util.Map;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;

/**
 * Tests and models for readers who want them: all columns of a table.
 *
 * @param note what keeps its figures from being misread
 */
record OtherTables(String table, String sheet, String note) {

  private static final String ACROSS_ONE = Messages.of("common.Limits-that-reach-across-1-the");

  private static final List<OtherTables> ALL =
      List.of(
          new OtherTables(
              "group_tests",
              Messages.of("workbook.OtherTables.tests"),
              Messages.of("common.A-large-p-does-not-show")),
          new OtherTables(
              "rate_ratios", Messages.of("workbook.OtherTables.rate-ratios"), ACROSS_ONE),
          new OtherTables(
              "mean_life_differences",
              Messages.of("workbook.OtherTables.mean-life-differences"),
              Messages.of("common.Limits-that-reach-across-0-the")),
          new OtherTables(
              "hazard_ratios",
              Messages.of("workbook.OtherTables.hazard-ratios"),
              Messages.of(
                  "workbook.OtherTables.above-1-fails-sooner-than-the",
                  Map.of("acrossone", ACROSS_ONE))),
          new OtherTables(
              "parametric_fits",
              Messages.of("workbook.OtherTables.fitted-life"),
              Messages.of("common.Shape-above-1-failure-grows-likelier")),
          new OtherTables(
              "fit_check",
              Messages.of("workbook.OtherTables.fit-check"),
              Messages.of("workbook.OtherTables.a-wide-gap-means-that-the")),
          new OtherTables(
              "dating_comparison",
              Messages.of("workbook.OtherTables.dating-of-failures"),
              Messages.of("common.The-same-records-with-failures-dated")),
          new OtherTables(
              "sample_size",
              Messages.of("workbook.OtherTables.what-comparisons-need"),
              Messages.of("workbook.OtherTables.how-many-failures-it-would-take")));

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
