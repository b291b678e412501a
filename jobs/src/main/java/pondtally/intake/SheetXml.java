package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Turns the XML of a sheet into rows of text cells: dates as YYYY-MM-DD, numbers without exponent,
 * formulas by their stored value, errors as they are shown.
 */
final class SheetXml extends DefaultHandler {

  private static final int LAST_COLUMN = 16_383;

  private final XlsxBook book;
  private final Consumer<RawRow> rows;
  private final SheetNotes notes;
  private final RawRow row = new RawRow();
  private final StringBuilder text = new StringBuilder();

  private int rowNumber;
  private boolean isInRow;
  private boolean isHiddenRow;
  private int column;
  private String type;
  private int style;
  private boolean hasFormula;
  private boolean isInText;
  private boolean hasValue;
  private boolean hasInlineText;
  private int phoneticDepth;

  SheetXml(XlsxBook book, boolean isHidden, Consumer<RawRow> rows) {
    this.book = book;
    this.rows = rows;
    this.notes =
        new SheetNotes(
            false, isHidden, new HiddenRows(), new TreeMap<>(), new TreeMap<>(), new TreeMap<>());
  }

  SheetNotes notes() {
    return notes;
  }

  @Override
  public void startElement(String uri, String localName, String qName, Attributes attributes)
      throws SAXException {
    switch (localName) {
      case "row" -> startRow(attributes);
      case "c" -> startCell(attributes);
      case "f" -> hasFormula = true;
      case "v" -> {
        isInText = true;
        hasValue = true;
      }
      // Some programs leave the text of an inline cell behind when they put a shared one there.
      case "t" -> {
        isInText = phoneticDepth == 0 && !"s".equals(type);
        hasInlineText |= isInText;
      }
      case "rPh" -> phoneticDepth++;
      case "mergeCell" -> merged(attributes.getValue("ref"));
      default -> {}
    }
  }

  @Override
  public void endElement(String uri, String localName, String qName) throws SAXException {
    switch (localName) {
      case "row" -> endRow();
      case "c" -> endCell();
      case "v", "t" -> isInText = false;
      case "rPh" -> phoneticDepth--;
      default -> {}
    }
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    if (isInText && text.length() <= SharedTexts.LONGEST) {
      text.append(characters, start, length);
    }
  }

  private void startRow(Attributes attributes) throws SAXException {
    String number = attributes.getValue("r");
    String hidden = attributes.getValue("hidden");
    isHiddenRow = "1".equals(hidden) || "true".equals(hidden);
    int next = number == null ? rowNumber + 1 : whole(number);
    if (next <= rowNumber) {
      throw new SAXException("row %s stands below row %s".formatted(next, rowNumber));
    }
    rowNumber = next;
    row.start(rowNumber);
    column = -1;
    isInRow = true;
  }

  private void endRow() {
    if (isInRow) {
      if (isHiddenRow && !row.isBlank()) {
        notes.hiddenRows().add(rowNumber);
      }
      rows.accept(row);
    }
    isInRow = false;
  }

  private void startCell(Attributes attributes) throws SAXException {
    String reference = attributes.getValue("r");
    column = reference == null ? column + 1 : ColumnLetters.column(reference);
    if (column < 0 || column > LAST_COLUMN) {
      throw new SAXException("no cell can be called " + Shown.value(String.valueOf(reference)));
    }
    type = attributes.getValue("t");
    String styleNumber = attributes.getValue("s");
    style = styleNumber == null ? 0 : whole(styleNumber);
    hasFormula = false;
    isInText = false;
    hasValue = false;
    hasInlineText = false;
    text.setLength(0);
  }

  private void endCell() throws SAXException {
    if (hasFormula) {
      notes.formulas().merge(column, 1, Integer::sum);
      if (text.isEmpty() && !"str".equals(type)) {
        notes.formulasWithoutValue().merge(column, 1, Integer::sum);
      }
    }
    if (hasValue && hasInlineText) {
      // One is the older of the two, and nothing tells which.
      throw new SAXException(
          "cell %s%s holds two texts".formatted(ColumnLetters.of(column), rowNumber));
    }
    if (!text.isEmpty()) {
      if (!row.cell(column).isEmpty()) {
        throw new SAXException(
            "cell %s%s stands there twice".formatted(ColumnLetters.of(column), rowNumber));
      }
      put(text.toString());
      if (row.cell(column).length() > SharedTexts.LONGEST) {
        row.cutColumn = column;
      }
    }
  }

  private void put(String stored) throws SAXException {
    switch (type == null ? "n" : type) {
      case "n" -> number(stored);
      case "s" -> row.set(column, shared(whole(stored)), false);
      case "b" -> row.set(column, stored.equals("1") ? "true" : "false", false);
      case "d" -> row.set(column, stored.replaceFirst("T00:00:00(\\.0+)?Z?$", ""), false);
      default -> row.set(column, stored, false);
    }
  }

  private void number(String stored) {
    String plain = PlainText.ofStored(stored);
    NumberLook look = book.styles().look(style);
    if (look != NumberLook.PLAIN) {
      String shown = look.text(PlainNumber.parse(plain), book.countsFrom1904());
      if (shown != null) {
        row.set(column, shown, false);
        return;
      }
    }
    row.set(column, plain, true);
  }

  private String shared(int index) throws SAXException {
    String shared = book.sharedText(index);
    if (shared == null) {
      throw new SAXException("a cell points to text number %s, which is absent".formatted(index));
    }
    return shared;
  }

  private void merged(String range) throws SAXException {
    if (range != null && range.matches("[A-Z]{1,3}\\d{1,7}:[A-Z]{1,3}\\d{1,7}")) {
      int first = whole(range.substring(0, range.indexOf(':')).replaceAll("[A-Z]+", ""));
      List<String> ranges = notes.merged().computeIfAbsent(first, number -> new ArrayList<>());
      ranges.add(range);
    }
  }

  private static int whole(String digits) throws SAXException {
    double number = digits.isEmpty() ? Double.NaN : PlainNumber.parse(digits);
    if (!(number >= 0 && number <= Integer.MAX_VALUE) || number != Math.rint(number)) {
      throw new SAXException("expected a whole number, found " + Shown.value(digits));
    }
    return (int) number;
  }
}
