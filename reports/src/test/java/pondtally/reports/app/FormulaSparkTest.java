package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.Shown;
import pondtally.reports.table.TablePackage;

/**
 * Five hundred texts that would do something if they were taken for more than text, in every text
 * field of every input table: they reach every output, and are text there.
 */
@Tag("reliability")
class FormulaSparkTest {

  @TempDir Path folder;

  @Test
  void noTextOfAPartnerComesAlive() throws IOException {
    Shown shown = Shown.risk("formula injection");
    List<String> payloads = FormulaProgram.write(folder.resolve("program"));
    assertEquals(500, new HashSet<>(payloads).size());
    Path out = folder.resolve("out");
    assertEquals(
        0, Main.run("report", folder.resolve("program").toString(), "--out", out.toString()));

    Map<String, LiveText.Found> found = new TreeMap<>();
    for (String name :
        List.of("program.xlsx", "fix-list.xlsx", "grant.docx", "report.html", "charts")) {
      found.put(name, LiveText.in(out.resolve(name)));
    }
    found.put("changes", LiveText.in(changes(out)));

    requireRaw(out, payloads);
    found.forEach((name, text) -> assertEquals(Set.of(), text.live(), name));
    assertEquals(500, found.get("program.xlsx").payloads().size());
    assertEquals(500, found.get("fix-list.xlsx").payloads().size());
    assertTrue(found.get("report.html").payloads().size() > 20);
    assertTrue(found.get("grant.docx").payloads().size() > 0);
    assertTrue(found.get("charts").payloads().size() > 0);
    assertTrue(found.get("changes").payloads().size() > 20);
    for (Map.Entry<String, LiveText.Found> each : found.entrySet()) {
      LiveText.Found text = each.getValue();
      shown.that(
          "%s: %s of 500 payloads in %,d texts, none live",
          each.getKey(), text.payloads().size(), text.texts());
    }
  }

  /** The check can fail: each of these is live. */
  @Test
  void liveTextIsFound() throws IOException {
    for (String page :
        List.of(
            "<p>a</p><img src=x onerror=\"go('fz0001')\">",
            "<script>let a = 'fz0001'</script>",
            "<a href='javascript:fz0001'>b</a>",
            "<svg onload=document.documentElement.id='live-fz0001'>")) {
      Path file = Files.writeString(folder.resolve("page.html"), page);
      assertEquals(1, LiveText.in(file).live().size(), page);
    }
    Path safe = Files.writeString(folder.resolve("page.html"), "<p title=\"fz0001\">&lt;b fz0001");
    assertEquals(Set.of(), LiveText.in(safe).live());
    Path book = folder.resolve("book.xlsx");
    try (XSSFWorkbook made = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(book)) {
      XSSFRow row = made.createSheet().createRow(0);
      row.createCell(0).setCellValue("=1+1|fz0001");
      row.createCell(1).setCellFormula("LEN(\"fz0002\")");
      made.write(out);
    }
    assertEquals(3, LiveText.in(book).live().size(), "a cell; a formula as a cell and as a part");
  }

  @Test
  void liveTextInDocumentsAndChartsIsFound() throws IOException {
    Path document = folder.resolve("document.docx");
    try (XWPFDocument made = new XWPFDocument();
        OutputStream out = Files.newOutputStream(document)) {
      made.createParagraph().createRun().setText("=fz0001, which is text");
      made.createParagraph().getCTP().addNewFldSimple().setInstr("DDEAUTO fz0002");
      made.createParagraph().createRun().getCTR().addNewInstrText().setStringValue("DDE fz0003");
      made.createParagraph().createHyperlinkRun("http://example.invalid/fz0004").setText("here");
      made.write(out);
    }
    LiveText.Found found = LiveText.in(document);
    assertEquals(4, found.payloads().size());
    assertEquals(3, found.live().size(), found.live().toString());

    for (String part :
        List.of(
            "<script>fz0001</script>",
            "<a xlink:href=\"javascript:fz0001\"><text>b</text></a>",
            "<rect onclick=\"go('fz0001')\"/>",
            "<image href=\"http://example.invalid/fz0001\"/>")) {
      Path chart =
          Files.writeString(
              folder.resolve("chart.svg"),
              "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\">%s</svg>"
                  .formatted(part));
      assertEquals(1, LiveText.in(chart).live().size(), part);
    }
  }

  /** What is said of a later report whose costs differ in every group. */
  private Path changes(Path out) throws IOException {
    Path later = folder.resolve("later");
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.toList()) {
        Files.copy(file, later.resolve(out.relativize(file).toString()));
      }
    }
    EditedTables.of(later.resolve("tables"), "costs").put("99999", row -> true, "build_usd").save();
    Path changes = folder.resolve("changes");
    assertEquals(
        0, Main.run("compare", out.toString(), later.toString(), "--out", changes.toString()));
    return changes;
  }

  /** The tables are data: what a partner wrote reads back the same, with no mark before it. */
  private static void requireRaw(Path out, List<String> payloads) {
    Set<String> ids = new HashSet<>();
    TablePackage.open(out.resolve("tables"))
        .table("devices")
        .orElseThrow()
        .rows()
        .forEach(row -> ids.add(row.text("device_id")));
    long same =
        payloads.stream()
            .filter(p -> p.matches("[=+@-][^\\p{Cntrl}]*"))
            .filter(ids::contains)
            .count();
    assertTrue(same > 50, "read back as they stood: " + same);
  }
}
