package pondtally.reports.workbook;

import java.util.List;
import java.util.function.BiFunction;
import org.apache.poi.ss.util.CellReference;

/** Makes the references for any row of one sheet. */
final class RefsAt {

  private final Place place;
  private final BiFunction<String, String, List<String>> elsewhere;

  /**
   * @param elsewhere the ranges of a column (second) of another sheet (first)
   */
  RefsAt(Place place, BiFunction<String, String, List<String>> elsewhere) {
    this.place = place;
    this.elsewhere = elsewhere;
  }

  /** References for the row with that number, counted from 0. */
  Refs at(int row) {
    return new Refs() {
      @Override
      public String cell(String column) {
        return CellReference.convertNumToColString(place.columnIndex(column)) + (row + 1);
      }

      @Override
      public String column(String column) {
        return place.range(column);
      }

      @Override
      public List<String> elsewhere(String sheet, String column) {
        return elsewhere.apply(sheet, column);
      }
    };
  }
}
