package pondtally.intake;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a source noticed about a sheet beside its cells.
 *
 * @param isGuessedEncoding whether the text was read as Windows-1252 for want of anything better
 * @param isHidden whether the sheet is hidden
 * @param hiddenRows its rows that are hidden
 * @param formulas number of formula cells by column, from 0
 * @param formulasWithoutValue number of formula cells, by column, that hold no stored value
 * @param merged merged ranges by their first row, as {@code A1:C1}
 */
record SheetNotes(
    boolean isGuessedEncoding,
    boolean isHidden,
    HiddenRows hiddenRows,
    SortedMap<Integer, Integer> formulas,
    SortedMap<Integer, Integer> formulasWithoutValue,
    SortedMap<Integer, List<String>> merged) {

  static SheetNotes ofText(boolean isGuessedEncoding) {
    return new SheetNotes(
        isGuessedEncoding,
        false,
        new HiddenRows(),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>());
  }
}
