package pondtally.check;

import java.util.Comparator;
import pondtally.record.Origin;

/**
 * A sheet of an input file, by number.
 *
 * @param file index of the file in the sorted list of input files
 * @param sheet index of the sheet in its workbook; 0 for text files
 */
record SheetPlace(int file, int sheet) implements Comparable<SheetPlace> {

  private static final Comparator<SheetPlace> ORDER =
      Comparator.comparingInt(SheetPlace::file).thenComparingInt(SheetPlace::sheet);

  static SheetPlace of(Origin origin) {
    return new SheetPlace(origin.file(), origin.sheet());
  }

  static SheetPlace of(SheetReport report) {
    return new SheetPlace(report.file(), report.sheet());
  }

  @Override
  public int compareTo(SheetPlace other) {
    return ORDER.compare(this, other);
  }
}
