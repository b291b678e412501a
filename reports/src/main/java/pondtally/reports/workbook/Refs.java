package pondtally.reports.workbook;

import java.util.List;

/** Cell references for the formulas of one line of a sheet. */
interface Refs {

  /** The cell of that column in this line, for example {@code D7}. */
  String cell(String column);

  /** All cells of that column on this sheet, for example {@code $D$7:$D$40}. */
  String column(String column);

  /** All cells of a column of another sheet; several ranges where it goes on in further sheets. */
  List<String> elsewhere(String sheet, String column);
}
