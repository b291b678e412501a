package pondtally.reports.page;

import java.util.List;
import pondtally.reports.table.Row;
import pondtally.reports.view.Rows;

/** How many lines of a list the page shows; the workbook holds all of them. */
final class Longest {

  static final int LINES = 400;

  private Longest() {}

  static List<Row> of(Rows rows) {
    return rows.list().stream().limit(LINES).toList();
  }
}
