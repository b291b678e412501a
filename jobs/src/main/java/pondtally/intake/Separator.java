package pondtally.intake;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pondtally.schema.TableSchema;

/** Decides what separates the cells of a text file, once for each file. */
final class Separator {

  private static final char[] KNOWN = {',', ';', '\t', '|'};

  private Separator() {}

  /**
   * The separator that makes a line into the most headings we know; of equals the one that cuts the
   * lines into the most cells of equal number; else the comma.
   *
   * @param lines the first lines of the file
   */
  static char of(List<String> lines) {
    if (!lines.isEmpty() && lines.get(0).matches("(?i)sep=[,;\t|]")) {
      return lines.get(0).charAt(4);
    }
    char best = ',';
    int most = -1;
    for (char separator : KNOWN) {
      int score = headings(lines, separator) * 10_000 + evenCells(lines, separator);
      if (score > most) {
        most = score;
        best = separator;
      }
    }
    return best;
  }

  private static int headings(List<String> lines, char separator) {
    int most = 0;
    for (String line : lines) {
      for (TableSchema table : TableSchema.all()) {
        Set<String> fields = new HashSet<>();
        for (String cell : line.split(quoted(separator), -1)) {
          table.match(cell.replace("\"", "")).ifPresent(match -> fields.add(match.field().name()));
        }
        most = Math.max(most, fields.size());
      }
    }
    return most;
  }

  private static String quoted(char separator) {
    return separator == '|' ? "\\|" : String.valueOf(separator);
  }

  /** Separators in the line that has the fewest of them, blank lines aside. */
  private static int evenCells(List<String> lines, char separator) {
    return (int)
        lines.stream()
            .filter(line -> !line.isBlank())
            .mapToLong(line -> line.chars().filter(c -> c == separator).count())
            .min()
            .orElse(0);
  }
}
