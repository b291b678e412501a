package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** What the workbook part says: its sheets in their order, and where the count of days begins. */
final class WorkbookXml extends DefaultHandler {

  /**
   * A sheet as it is listed.
   *
   * @param name shown on its tab
   * @param relation key of the part that holds it
   */
  record Sheet(String name, String relation, boolean isHidden) {}

  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private final List<Sheet> sheets = new ArrayList<>();
  private boolean countsFrom1904;

  @Override
  public void startElement(String uri, String localName, String qName, Attributes attributes) {
    if (localName.equals("workbookPr")) {
      String from1904 = attributes.getValue("date1904");
      countsFrom1904 = "1".equals(from1904) || "true".equals(from1904);
    } else if (localName.equals("sheet")) {
      String state = attributes.getValue("state");
      sheets.add(
          new Sheet(
              attributes.getValue("name"),
              attributes.getValue(RELATIONS, "id"),
              state != null && !state.equals("visible")));
    }
  }

  List<Sheet> sheets() {
    return sheets;
  }

  boolean countsFrom1904() {
    return countsFrom1904;
  }
}
