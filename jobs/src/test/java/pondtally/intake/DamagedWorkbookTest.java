package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks whose parts no spreadsheet program writes so. */
class DamagedWorkbookTest {

  @TempDir Path folder;

  /** The one is what was there before, and nothing tells which: neither is taken, nor both. */
  @Test
  void aCellWithTwoTextsIsRefused() throws IOException {
    Read read =
        Read.bytes(
            folder,
            "sites.xlsx",
            zipped(
                "<worksheet><sheetData><row r='1'><c r='A1' t='inlineStr'><v>new</v>"
                    + "<is><t>site_id</t></is></c></row></sheetData></worksheet>"));
    assertEquals(List.of(), read.records());
    assertTrue(
        read.findings().get(0).contains("cell A1 holds two texts"), read.findings().toString());
  }

  /** A sheet whose XML breaks off: rows before the break count, and the break is told. */
  @Test
  void aSheetThatBreaksOffIsReadToTheBreak() throws IOException {
    assertEquals(
        List.of(
            "0 - set-aside file-unreadable: Reading stopped after row 2: its content breaks off or"
                + " is damaged (line 1 of a part). Rows below it are not counted. Save the file"
                + " anew and run again."),
        Read.bytes(
                folder,
                "sites.xlsx",
                zipped(
                    "<worksheet><sheetData><row><c t='inlineStr'><is><t>site_id</t></is></c><c"
                        + " t='inlineStr'><is><t>town</t></is></c></row><row><c"
                        + " t='inlineStr'><is><t>S1</t></is></c></row><row><c></row>"))
            .findings());
  }

  /** An entity that stands for others a billion times over is refused, not expanded. */
  @Test
  void entitiesAreNotExpanded() throws IOException {
    Read read =
        Read.bytes(
            folder,
            "sites.xlsx",
            zipped(
                "<!DOCTYPE x [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;'>]>"
                    + "<worksheet><sheetData><row><c t='inlineStr'><is><t>&b;</t></is></c></row>"
                    + "</sheetData></worksheet>"));
    assertTrue(read.rules().contains("0 file-unreadable"), read.rules().toString());
    assertEquals(List.of(), read.records());
  }

  private static byte[] zipped(String sheet) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    String xml = "<?xml version='1.0' encoding='UTF-8'?>";
    String main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    String office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    String relations = "http://schemas.openxmlformats.org/package/2006/relationships";
    String type = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      entry(
          zip,
          "[Content_Types].xml",
          xml
              + "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'>"
              + "<Default Extension='rels'"
              + " ContentType='application/vnd.openxmlformats-package.relationships+xml'/>"
              + "<Override PartName='/xl/workbook.xml' ContentType='%ssheet.main+xml'/>"
                  .formatted(type)
              + "<Override PartName='/xl/s.xml' ContentType='%sworksheet+xml'/></Types>"
                  .formatted(type));
      String one =
          "<Relationships xmlns='%s'><Relationship Id='r1' Type='%s/%s' Target='%s'/></Relationships>";
      entry(
          zip,
          "_rels/.rels",
          xml + one.formatted(relations, office, "officeDocument", "xl/workbook.xml"));
      entry(
          zip,
          "xl/_rels/workbook.xml.rels",
          xml + one.formatted(relations, office, "worksheet", "s.xml"));
      entry(
          zip,
          "xl/workbook.xml",
          xml
              + "<workbook xmlns='%s' xmlns:r='%s'><sheets><sheet name='Sheet1' sheetId='1' r:id='r1'/></sheets></workbook>"
                  .formatted(main, office));
      entry(zip, "xl/s.xml", xml + sheet);
    }
    return bytes.toByteArray();
  }

  private static void entry(ZipOutputStream zip, String name, String content) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(content.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }
}
