package pondtally.reports.fixlist;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import pondtally.reports.text.Messages;

/**
 * The rows of one sheet (or text file) of a partner that have an issue.
 *
 * @param sheet empty for text files
 * @param table input table; empty where it was not recognised
 * @param headings the partner's own, by position from 1
 * @param fields our names of the columns that are read, likewise
 * @param rows those that are not counted first
 */
record SheetBlock(
    String file,
    String sheet,
    String table,
    SortedMap<Integer, String> headings,
    SortedMap<Integer, String> fields,
    List<FaultyRow> rows) {

  String title() {
    return sheet.isEmpty()
        ? file
        : Messages.of("fixlist.SheetBlock.sheet", Map.of("file", file, "sheet", sheet));
  }
}
