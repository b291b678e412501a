package pondtally.intake;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Fuzz target: workbooks. The first byte says which part of a small sound workbook the others stand
 * for, or that they are the whole file.
 */
public final class FuzzXlsx {

  private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
  private static final String MAIN =
      "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String SHEET = "xl/worksheets/sheet1.xml";
  private static final String[] PARTS = {
    SHEET, "xl/workbook.xml", "xl/styles.xml", "xl/sharedStrings.xml"
  };
  private static final Map<String, String> SOUND = sound();
  private static final Path FOLDER = FuzzCsv.folder();

  private FuzzXlsx() {}

  private static Map<String, String> sound() {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put(
        "[Content_Types].xml",
        XML
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + type("/xl/workbook.xml", "sheet.main")
            + type("/" + SHEET, "worksheet")
            + type("/xl/styles.xml", "styles")
            + type("/xl/sharedStrings.xml", "sharedStrings")
            + "</Types>");
    parts.put("_rels/.rels", relations("officeDocument", "xl/workbook.xml"));
    parts.put(
        "xl/_rels/workbook.xml.rels",
        relations(
            "worksheet",
            "worksheets/sheet1.xml",
            "styles",
            "styles.xml",
            "sharedStrings",
            "sharedStrings.xml"));
    parts.put(
        "xl/workbook.xml",
        XML
            + "<workbook %s xmlns:r=\"%s\"><sheets><sheet name=\"Installs\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>"
                .formatted(MAIN, RELATIONS));
    parts.put(
        "xl/styles.xml",
        XML
            + "<styleSheet %s><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/></cellXfs></styleSheet>"
                .formatted(MAIN));
    parts.put(
        "xl/sharedStrings.xml",
        XML
            + "<sst %s><si><t>device_id</t></si><si><t>site_id</t></si><si><t>installed_on</t></si><si><t>D1</t></si><si><t>S1</t></si></sst>"
                .formatted(MAIN));
    parts.put(SHEET, sheet());
    return parts;
  }

  static String sheet() {
    return XML
        + "<worksheet %s><sheetData>".formatted(MAIN)
        + "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\" t=\"s\"><v>1</v></c><c r=\"C1\" t=\"s\"><v>2</v></c></row>"
        + "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>3</v></c><c r=\"B2\" t=\"s\"><v>4</v></c><c r=\"C2\" s=\"1\"><v>45000</v></c></row>"
        + "</sheetData></worksheet>";
  }

  private static String type(String part, String kind) {
    return "<Override PartName=\"%s\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.%s+xml\"/>"
        .formatted(part, kind);
  }

  private static String relations(String... kindsAndTargets) {
    StringBuilder xml =
        new StringBuilder(XML)
            .append(
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
    for (int i = 0; i < kindsAndTargets.length; i += 2) {
      xml.append(
          "<Relationship Id=\"rId%s\" Type=\"%s/%s\" Target=\"%s\"/>"
              .formatted(i / 2 + 1, RELATIONS, kindsAndTargets[i], kindsAndTargets[i + 1]));
    }
    return xml.append("</Relationships>").toString();
  }

  /** The workbook with one part replaced. */
  static byte[] book(String part, byte[] content) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> sound : SOUND.entrySet()) {
        zip.putNextEntry(new ZipEntry(sound.getKey()));
        zip.write(
            sound.getKey().equals(part)
                ? content
                : sound.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    if (data.length > 0) {
      byte[] content = Arrays.copyOfRange(data, 1, data.length);
      int part = Math.floorMod(data[0], PARTS.length + 1);
      byte[] file = part == PARTS.length ? content : book(PARTS[part], content);
      HostileCheck.of(FOLDER, new HostileFile("x.xlsx", file), "fuzz");
    }
  }
}
