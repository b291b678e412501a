package pondtally.reports.fixlist;

import java.util.List;

/**
 * The rows of one sheet (or text file) of a partner that have an issue.
 *
 * @param sheet empty for text files
 * @param headings the partner's own, by position from 1
 * @param rows those that are not counted first
 */
record SheetBlock(
    String file,
    String sheet,
    java.util.SortedMap<Integer, String> headings,
    List<FaultyRow> rows) {

  String title() {
    return sheet.isEmpty() ? file : file + ", sheet " + sheet;
  }
}
