package pondtally.intake;

import java.util.List;
import java.util.regex.Pattern;
import pondtally.schema.TableSchema;

/** Decides what separates the cells of a text file, once for each file. */
final class Separator {

  private static final List<Character> KNOWN = List.of(',', ';', '\t', '|');
  private static final int FEWEST_HEADINGS = 2;

  private Separator() {}

  /**
   * The separator that cuts a line into headings we know; where no line has any, the one that
   * stands in every line, and most often in the line that has the fewest of it; else the comma.
   *
   * @param lines the first lines of the file
   */
  static char of(List<String> lines) {
    if (!lines.isEmpty() && lines.get(0).matches("(?i)sep=[,;\t|]")) {
      return lines.get(0).charAt(4);
    }
    for (String line : lines) {
      int most = FEWEST_HEADINGS - 1;
      char best = 0;
      for (char separator : KNOWN) {
        int headings = headings(line, separator);
        if (headings > most) {
          most = headings;
          best = separator;
        }
      }
      if (best != 0) {
        return best;
      }
    }
    return mostEven(lines);
  }

  /** How many cells of a line are headings of one table, if at least half of them are; else 0. */
  private static int headings(String line, char separator) {
    String[] cells =
        Pattern.compile(String.valueOf(separator), Pattern.LITERAL)
            .split(line.replace("\"", ""), -1);
    if (cells.length < FEWEST_HEADINGS) {
      return 0;
    }
    RawRow row = new RawRow();
    row.start(1);
    for (String cell : cells) {
      row.add(cell);
    }
    return TableSchema.all().stream()
        .filter(table -> Headings.canTell(table, row))
        .map(table -> Headings.of(table, row, SheetMap.NONE))
        .filter(Headings::isTelling)
        .mapToInt(Headings::matched)
        .max()
        .orElse(0);
  }

  private static char mostEven(List<String> lines) {
    char best = ',';
    long most = 0;
    for (char separator : KNOWN) {
      long fewest =
          lines.stream()
              .filter(line -> !line.isBlank())
              .mapToLong(line -> line.chars().filter(c -> c == separator).count())
              .min()
              .orElse(0);
      if (fewest > most) {
        most = fewest;
        best = separator;
      }
    }
    return best;
  }
}
