package pondtally.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** As what the cell styles of a workbook show numbers. */
final class CellStyles extends DefaultHandler {

  private static final int MOST_STYLES = 70_000;

  private final Map<Integer, String> formats = new HashMap<>();
  private final List<Integer> formatOfStyle = new ArrayList<>();
  private boolean isInCellStyles;
  private NumberLook[] looks = new NumberLook[0];

  @Override
  public void startElement(String uri, String localName, String qName, Attributes attributes) {
    if (formats.size() + formatOfStyle.size() > MOST_STYLES) {
      return;
    }
    switch (localName) {
      case "numFmt" ->
          formats.put(number(attributes.getValue("numFmtId")), attributes.getValue("formatCode"));
      case "cellXfs" -> isInCellStyles = true;
      case "xf" -> {
        if (isInCellStyles) {
          formatOfStyle.add(number(attributes.getValue("numFmtId")));
        }
      }
      default -> {}
    }
  }

  @Override
  public void endElement(String uri, String localName, String qName) {
    if (localName.equals("cellXfs")) {
      isInCellStyles = false;
    }
  }

  @Override
  public void endDocument() {
    looks = new NumberLook[formatOfStyle.size()];
    for (int i = 0; i < looks.length; i++) {
      int format = formatOfStyle.get(i);
      String code = formats.get(format);
      looks[i] =
          NumberLook.of(format, code == null ? BuiltinFormats.getBuiltinFormat(format) : code);
    }
  }

  private static int number(String digits) {
    double number = digits == null || digits.isEmpty() ? 0 : PlainNumber.parse(digits);
    return number >= 0 && number <= Integer.MAX_VALUE ? (int) number : 0;
  }

  /** As what numbers of a style are shown. */
  NumberLook look(int style) {
    return style >= 0 && style < looks.length ? looks[style] : NumberLook.PLAIN;
  }
}
