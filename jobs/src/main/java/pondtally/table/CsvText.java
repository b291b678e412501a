package pondtally.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Cells of a CSV file one by one (RFC 4180), as the files of the result tables have them. */
public final class CsvText {

  private CsvText() {}

  /** A text as a cell behind another one; empty for null. */
  public static String cell(String text) {
    return text == null ? "" : isPlain(text) ? text : quoted(text);
  }

  /** A number as a cell; see {@link CellText#number}. */
  public static String cell(double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException(number + " is no cell of a table");
    }
    return CellText.number(number);
  }

  /** Letters, digits and what stands within a word: never quoted. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain =
          c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '-' && c <= '9' || c == '_';
      if (!plain) {
        return false;
      }
    }
    return !text.isEmpty();
  }

  private static String quoted(String text) {
    StringBuilder line = new StringBuilder();
    try (CSVPrinter csv = new CSVPrinter(line, CSVFormat.RFC4180)) {
      csv.print("a");
      csv.print(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return line.substring("a,".length());
  }
}
