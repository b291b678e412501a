package pondtally.record;

import java.io.Serializable;
import java.util.Comparator;

/**
 * Where a record stands in the partners' files.
 *
 * @param file index of the file in the sorted list of input files
 * @param sheet index of the sheet in its workbook; 0 for text files
 * @param row row number as a spreadsheet shows it, from 1
 * @param changed whether a value of the row was converted, mapped or dropped on the way in
 */
public record Origin(int file, int sheet, int row, boolean changed)
    implements Comparable<Origin>, Serializable {

  private static final Comparator<Origin> FILE_ORDER =
      Comparator.comparingInt(Origin::file)
          .thenComparingInt(Origin::sheet)
          .thenComparingInt(Origin::row);

  /** File order: path, then sheet, then row. */
  @Override
  public int compareTo(Origin other) {
    return FILE_ORDER.compare(this, other);
  }
}
