package pondtally.intake;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Rows of a CSV text (RFC 4180). A line without quotation marks is cut at its separators. Where
 * there are some, lines are gathered until the quotation is closed and Commons CSV takes them
 * apart; if it cannot, or if the quotation has swallowed whole rows, the first line is taken as it
 * stands and the rest is read anew, so that a stray mark costs one row and never those after it.
 */
final class CsvRows {

  /**
   * A quotation that runs over more lines, or characters, is taken for one that was never closed.
   */
  private static final int MOST_LINES = 100;

  private static final int MOST_CHARACTERS = 50_000;
  private static final int FEW_CELLS = 4;

  private final LineReader lines;
  private final char separator;
  private final CSVFormat format;
  private int number;

  CsvRows(LineReader lines, char separator) {
    this.lines = lines;
    this.separator = separator;
    this.format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(separator)
            .setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true)
            .get();
  }

  /** Fills in the next row; false: there is none. Its number is the one a spreadsheet shows. */
  boolean next(RawRow row) throws IOException {
    String line = lines.next();
    if (line == null) {
      return false;
    }
    row.start(++number);
    if (line.indexOf('"') < 0) {
      cut(line, row);
    } else if (!cutQuoted(line, row)) {
      row.start(number);
      gathered(line, row);
    }
    return true;
  }

  private void cut(String line, RawRow row) {
    int start = 0;
    int end = line.indexOf(separator);
    while (end >= 0) {
      row.add(line.substring(start, end));
      start = end + 1;
      end = line.indexOf(separator, start);
    }
    row.add(line.substring(start));
  }

  /** Cuts a line whose quotations are closed and stand alone in their cells; false: it is none. */
  private boolean cutQuoted(String line, RawRow row) {
    int start = 0;
    while (start <= line.length()) {
      boolean isQuoted = start < line.length() && line.charAt(start) == '"';
      int end = isQuoted ? closing(line, start) : line.indexOf(separator, start);
      if (isQuoted && end < 0) {
        return false;
      }
      end = end < 0 ? line.length() : end;
      String cell = line.substring(start, end);
      if (!isQuoted && cell.indexOf('"') >= 0) {
        return false;
      }
      row.add(isQuoted ? unquoted(cell) : cell);
      start = end + 1;
    }
    return true;
  }

  /**
   * Where a quoted cell ends; -1 where its closing mark is absent or followed by something else.
   */
  private int closing(String line, int start) {
    int mark = line.indexOf('"', start + 1);
    while (mark >= 0 && mark + 1 < line.length() && line.charAt(mark + 1) == '"') {
      mark = line.indexOf('"', mark + 2);
    }
    boolean isEnd = mark + 1 == line.length() || (mark >= 0 && line.charAt(mark + 1) == separator);
    return mark >= 0 && isEnd ? mark + 1 : -1;
  }

  private static String unquoted(String cell) {
    String inner = cell.substring(1, cell.length() - 1);
    return inner.indexOf('"') < 0 ? inner : inner.replace("\"\"", "\"");
  }

  private void gathered(String line, RawRow row) throws IOException {
    List<String> gathered = gather(line);
    CSVRecord record = gathered == null ? null : parse(String.join("\n", gathered));
    if (record == null || swallowedRows(gathered, record.size())) {
      putBackAllButFirst(gathered);
      cut(line, row);
      row.hasStrayQuote = true;
      return;
    }
    for (String cell : record) {
      row.add(cell);
    }
  }

  /** The line and those that its quotation runs over; null where it is not closed. */
  private List<String> gather(String line) throws IOException {
    List<String> gathered = new ArrayList<>();
    gathered.add(line);
    int characters = line.length();
    QuoteState state = new QuoteState(separator);
    state.read(line);
    while (state.isOpen()) {
      String more = lines.next();
      if (more == null || gathered.size() >= MOST_LINES || characters > MOST_CHARACTERS) {
        if (more != null) {
          lines.putBack(more);
        }
        putBackAllButFirst(gathered);
        return null;
      }
      gathered.add(more);
      characters += more.length();
      state.read("\n" + more);
    }
    return gathered;
  }

  private void putBackAllButFirst(List<String> gathered) {
    for (int i = gathered == null ? 0 : gathered.size() - 1; i > 0; i--) {
      lines.putBack(gathered.get(i));
    }
  }

  /** The cells of one record; null where the quotation marks do not fit. */
  private CSVRecord parse(String text) {
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      List<CSVRecord> records = parser.getRecords();
      return records.size() == 1 ? records.get(0) : null;
    } catch (IOException | RuntimeException e) {
      return null;
    }
  }

  /** Whether one of the lines after the first has by itself as many cells as the whole. */
  private boolean swallowedRows(List<String> gathered, int cells) {
    if (cells < FEW_CELLS) {
      return false;
    }
    for (String line : gathered.subList(1, gathered.size())) {
      if (line.chars().filter(c -> c == separator).count() >= cells - 1) {
        return true;
      }
    }
    return false;
  }
}
