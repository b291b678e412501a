package pondtally.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Which cell styles of a workbook show numbers as dates. */
final class DateStyles extends DefaultHandler {

  private static final int MOST_STYLES = 70_000;

  private final Map<Integer, String> formats = new HashMap<>();
  private final List<Integer> formatOfStyle = new ArrayList<>();
  private boolean isInCellStyles;
  private boolean[] isDate = new boolean[0];

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
    isDate = new boolean[formatOfStyle.size()];
    for (int i = 0; i < isDate.length; i++) {
      int format = formatOfStyle.get(i);
      String code = formats.get(format);
      String known = code == null ? BuiltinFormats.getBuiltinFormat(format) : code;
      isDate[i] = known != null && DateUtil.isADateFormat(format, known);
    }
  }

  private static int number(String digits) {
    double number = digits == null || digits.isEmpty() ? 0 : PlainNumber.parse(digits);
    return number >= 0 && number <= Integer.MAX_VALUE ? (int) number : 0;
  }

  boolean isDate(int style) {
    return style >= 0 && style < isDate.length && isDate[style];
  }
}
