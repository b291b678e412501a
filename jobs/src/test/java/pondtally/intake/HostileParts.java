package pondtally.intake;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Files made to use up memory and time, or to fetch what they should not. */
final class HostileParts {

  private static final String HEADINGS = "device_id,site_id,installed_on";
  private static final String SHEET =
      "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>";
  private static final String SHEET_END = "</sheetData></worksheet>";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String CONTENT =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  /** Writes the only sheet of a workbook. */
  interface Body {
    void write(OutputStream out) throws IOException;
  }

  private HostileParts() {}

  /** A workbook with one sheet, called installs, whose part is {@code body}. */
  static void book(Path file, Body body) throws IOException {
    try (ZipOutputStream zip =
        new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
      part(
          zip,
          "[Content_Types].xml",
          "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
              + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
              + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"%ssheet.main+xml\"/>"
                  .formatted(CONTENT)
              + "<Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\"%sworksheet+xml\"/></Types>"
                  .formatted(CONTENT));
      part(zip, "_rels/.rels", relation("officeDocument", "xl/workbook.xml"));
      part(
          zip,
          "xl/workbook.xml",
          "<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" xmlns:r=\"%s\"><sheets><sheet name=\"installs\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>"
              .formatted(RELATIONS));
      part(zip, "xl/_rels/workbook.xml.rels", relation("worksheet", "worksheets/sheet1.xml"));
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      body.write(zip);
      zip.closeEntry();
    }
  }

  private static String relation(String type, String target) {
    return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r1\" Type=\"%s/%s\" Target=\"%s\"/></Relationships>"
        .formatted(RELATIONS, type, target);
  }

  private static void part(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    put(zip, text);
    zip.closeEntry();
  }

  private static void put(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String row(int number, String... cells) {
    StringBuilder row = new StringBuilder("<row r=\"" + number + "\">");
    for (String cell : cells) {
      row.append("<c t=\"inlineStr\"><is><t>").append(cell).append("</t></is></c>");
    }
    return row.append("</row>").toString();
  }

  /** So many bytes of blanks between two rows. */
  static Body blanks(long bytes) {
    return out -> {
      put(out, SHEET + row(1, HEADINGS.split(",")));
      byte[] blank = " ".repeat(1 << 20).getBytes(StandardCharsets.UTF_8);
      for (long written = 0; written < bytes; written += blank.length) {
        out.write(blank);
      }
      put(out, row(2, "D1", "S1", "2024-05-01") + SHEET_END);
    };
  }

  /** An entity that stands for the content of another file. */
  static Body outsideEntity(Path secret) {
    return out ->
        put(
            out,
            "<!DOCTYPE a [<!ENTITY e SYSTEM \"%s\">]>".formatted(secret.toUri())
                + SHEET
                + row(1, HEADINGS.split(","))
                + row(2, "&e;", "S1", "2024-05-01")
                + SHEET_END);
  }

  /** Ten entities, each ten times the one before: ten thousand million in the end. */
  static Body laughs() {
    StringBuilder entities = new StringBuilder("<!DOCTYPE a [<!ENTITY e0 \"ha\">");
    for (int i = 1; i <= 10; i++) {
      entities.append("<!ENTITY e" + i + " \"" + ("&e" + (i - 1) + ";").repeat(10) + "\">");
    }
    return out ->
        put(
            out,
            entities
                + "]>"
                + SHEET
                + row(1, HEADINGS.split(","))
                + row(2, "&e10;", "S1", "2024-05-01")
                + SHEET_END);
  }

  /** One cell of so many letters, which do not pack well. */
  static Body longCell(long characters) {
    return out -> {
      put(out, SHEET + row(1, HEADINGS.split(",")) + "<row r=\"2\"><c t=\"inlineStr\"><is><t>");
      letters(out, characters);
      put(out, "</t></is></c></row>" + row(3, "D2", "S1", "2024-05-01") + SHEET_END);
    };
  }

  /** A text file with one cell of so many letters. */
  static void longText(Path file, long characters) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      put(out, HEADINGS + "\nD1,S1,2024-05-01\n");
      letters(out, characters);
      put(out, ",S1,2024-05-01\nD2,S1,2024-05-01\n");
    }
  }

  private static void letters(OutputStream out, long characters) throws IOException {
    Random random = new Random(3);
    byte[] block = new byte[1 << 16];
    for (int i = 0; i < block.length; i++) {
      block[i] = (byte) ('a' + random.nextInt(26));
    }
    for (long written = 0; written < characters; written += block.length) {
      out.write(block);
    }
  }

  private static String[] wide(String first, int columns, String rest) {
    String[] cells = new String[columns];
    for (int i = 0; i < columns; i++) {
      cells[i] = i < 3 ? first.split(",")[i] : rest + i;
    }
    return cells;
  }

  /** So many columns, of which three are ours. */
  static Body wideBook(int columns) {
    return out -> {
      put(out, SHEET + row(1, wide(HEADINGS, columns, "column ")));
      for (int i = 0; i < 20; i++) {
        put(out, row(2 + i, wide("D" + i + ",S1,2024-05-01", columns, "v")));
      }
      put(out, SHEET_END);
    };
  }

  /** The same as text. */
  static void wideText(Path file, int columns) throws IOException {
    try (Writer out = Files.newBufferedWriter(file)) {
      out.write(String.join(",", wide(HEADINGS, columns, "column ")) + "\n");
      for (int i = 0; i < 20; i++) {
        out.write(String.join(",", wide("D" + i + ",S1,2024-05-01", columns, "v")) + "\n");
      }
    }
  }
}
