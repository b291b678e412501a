package pondtally.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.apache.poi.xwpf.usermodel.IBodyElement;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.PlainPicture;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Cautions;
import pondtally.reports.view.Grant;
import pondtally.reports.view.GrantSection;
import pondtally.reports.view.GrantTable;

class GrantDocumentTest {

  private static final List<ChartFile> CHARTS =
      List.of(
          new ChartFile("survival", "What is seen", "A curve that falls from 100 to 57 of 100."),
          new ChartFile("acre-years", "Acres & \"more\" <seen>", "Bars by year."),
          new ChartFile("cumulative-incidence", "Has no place here", "Not shown."));

  @TempDir static Path folder;
  private static TablePackage tables;
  private static Path file;

  @BeforeAll
  static void write() throws IOException {
    tables = TablesFixture.open(folder.resolve("t"), 120, Map.of("period_year", "2025"));
    file = write(tables, "grant.docx");
  }

  private static Path write(TablePackage from, String name) throws IOException {
    for (ChartFile chart : CHARTS) {
      PlainPicture.write(folder.resolve(chart.name() + ".png"), 60, 40);
    }
    Path written = folder.resolve(name);
    GrantDocument.write(from, folder, CHARTS, written);
    return written;
  }

  private static XWPFDocument open(Path docx) throws IOException {
    return new XWPFDocument(Files.newInputStream(docx));
  }

  @Test
  void oneTitleThenHeadingsInOrder() throws Exception {
    try (XWPFDocument document = open(file)) {
      List<String> outline = new ArrayList<>();
      for (XWPFParagraph paragraph : document.getParagraphs()) {
        String style = paragraph.getStyle();
        if (style.equals("Title") || style.startsWith("Heading")) {
          assertTrue(document.getStyles().styleExist(style), style);
          outline.add(style + " " + paragraph.getText());
        }
      }
      assertEquals(
          List.of(
              "Title Quillwater Basin: figures for a grant application",
              "Heading1 Need",
              "Heading1 What was done",
              "Heading1 Outcomes",
              "Heading2 Properties protected",
              "Heading2 Wetland kept",
              "Heading2 Removals avoided",
              "Heading2 How long devices last",
              "Heading1 Cost",
              "Heading2 Benefit against cost",
              "Heading1 Who paid, and match",
              "Heading1 Evidence and its limits",
              "Heading1 Next season",
              "Heading1 Cautions",
              "Heading1 Methods in short"),
          outline);
    }
  }

  @Test
  void headingStylesHaveAnOutlineLevel() throws Exception {
    try (XWPFDocument document = open(file)) {
      for (int level = 1; level <= 2; level++) {
        var style = document.getStyles().getStyle("Heading" + level).getCTStyle();
        assertEquals("heading " + level, style.getName().getVal());
        assertEquals(level - 1, style.getPPr().getOutlineLvl().getVal().intValue());
      }
      for (IBodyElement element : document.getBodyElements()) {
        if (element instanceof XWPFParagraph paragraph) {
          assertTrue(document.getStyles().styleExist(paragraph.getStyle()), paragraph.getText());
        }
      }
    }
  }

  @Test
  void everyPictureHasAlternativeTextAndTitleAndACaption() throws Exception {
    try (XWPFDocument document = open(file)) {
      List<XWPFParagraph> paragraphs = document.getParagraphs();
      int pictures = 0;
      for (int i = 0; i < paragraphs.size(); i++) {
        for (var drawing : paragraphs.get(i).getCTP().getRList()) {
          for (var inline : drawing.getDrawingList()) {
            ChartFile chart = CHARTS.get(1 - pictures);
            assertEquals(chart.description(), inline.getInlineArray(0).getDocPr().getDescr());
            assertEquals(chart.title(), inline.getInlineArray(0).getDocPr().getTitle());
            assertEquals("Caption", paragraphs.get(i + 1).getStyle());
            pictures++;
          }
        }
      }
      assertEquals(2, pictures);
      assertEquals(2, document.getAllPictures().size());
    }
  }

  @Test
  void tablesRepeatTheirHeadingsAndAreDescribed() throws Exception {
    try (XWPFDocument document = open(file)) {
      assertTrue(document.getTables().size() >= 9, document.getTables().size() + " tables");
      for (XWPFTable table : document.getTables()) {
        assertTrue(table.getRow(0).isRepeatHeader());
        assertTrue(table.getCTTbl().getTblPr().getTblDescription().getVal().length() > 40);
        assertFalse(table.getCTTbl().getTblPr().getTblCaption().getVal().isEmpty());
        int columns = table.getCTTbl().getTblGrid().sizeOfGridColArray();
        for (XWPFTableRow row : table.getRows()) {
          assertEquals(columns, row.getTableCells().size());
          for (XWPFTableCell cell : row.getTableCells()) {
            assertFalse(cell.getText().isBlank(), table.getText());
            assertFalse(cell.getCTTc().getTcPr().isSetGridSpan());
            assertFalse(cell.getCTTc().getTcPr().isSetVMerge());
          }
        }
        int width = 0;
        for (var column : table.getCTTbl().getTblGrid().getGridColList()) {
          width += ((Number) column.getW()).intValue();
        }
        assertTrue(width <= 9_360, width + " twentieths of a point");
      }
    }
  }

  @Test
  void captionsAreNumberedByFields() throws Exception {
    List<String> tablesNumbered = fields("SEQ Table");
    try (XWPFDocument document = open(file)) {
      assertEquals(document.getTables().size(), tablesNumbered.size());
    }
    for (int i = 0; i < tablesNumbered.size(); i++) {
      assertEquals(Integer.toString(i + 1), tablesNumbered.get(i));
    }
    assertEquals(List.of("1", "2"), fields("SEQ Figure"));
  }

  private List<String> fields(String kind) throws IOException {
    Matcher field =
        Pattern.compile("w:instr=\"" + kind + "[^\"]*\"><w:r><w:t>(\\d+)</w:t>")
            .matcher(part(file, "word/document.xml"));
    List<String> numbers = new ArrayList<>();
    while (field.find()) {
      numbers.add(field.group(1));
    }
    return numbers;
  }

  private static String part(Path docx, String name) throws IOException {
    try (ZipFile zip = new ZipFile(docx.toFile())) {
      return new String(
          zip.getInputStream(zip.getEntry(name)).readAllBytes(),
          java.nio.charset.StandardCharsets.UTF_8);
    }
  }

  @Test
  void languageTitleSubjectAndPageAreSet() throws Exception {
    try (XWPFDocument document = open(file)) {
      var core = document.getProperties().getCoreProperties();
      assertEquals("Quillwater Basin: figures for a grant application", core.getTitle());
      assertTrue(core.getSubject().contains("December\u00a031,\u00a02025"), core.getSubject());
      assertEquals("Pondtally", core.getCreator());
      assertEquals(
          LocalDate.of(2025, 12, 31),
          core.getCreated().toInstant().atZone(ZoneOffset.UTC).toLocalDate());
      assertEquals(
          "en-US", document.getPackage().getPackageProperties().getLanguageProperty().orElse(""));
      var page = document.getDocument().getBody().getSectPr().getPgSz();
      assertEquals("12240 15840", page.getW() + " " + page.getH());
      String foot = document.getFooterList().get(0).getText();
      assertTrue(foot.startsWith("Records up to December\u00a031,\u00a02025"), foot);
    }
    String styles = part(file, "word/styles.xml");
    assertTrue(styles.contains("<w:lang w:val=\"en-US\""), "language of the text");
    assertTrue(styles.contains("<w:widowControl/>"), "widow control");
    String footer = part(file, "word/footer1.xml");
    assertTrue(footer.contains("w:instr=\"PAGE\"") && footer.contains("w:instr=\"NUMPAGES\""));
  }

  @Test
  void everySentenceAndCellComesFromTheView() throws Exception {
    List<String> body = new ArrayList<>();
    List<String> cells = new ArrayList<>();
    for (GrantSection section : Grant.of(tables)) {
      section.sentences().forEach(sentence -> body.add(sentence.text()));
      for (GrantTable table : section.tables()) {
        cells.addAll(table.columns());
        table.rows().forEach(row -> row.forEach(cell -> cells.add(cell.text())));
      }
    }
    try (XWPFDocument document = open(file)) {
      List<String> printed =
          document.getParagraphs().stream()
              .filter(p -> p.getStyle().equals("BodyText"))
              .filter(p -> p.getRuns().size() == 1)
              .map(XWPFParagraph::getText)
              .toList();
      assertEquals(body, printed);
      List<String> inTables =
          document.getTables().stream()
              .flatMap(table -> table.getRows().stream())
              .flatMap(row -> row.getTableCells().stream())
              .map(XWPFTableCell::getText)
              .toList();
      assertEquals(cells, inTables);
    }
  }

  @Test
  void cautionsAreAllThere() throws Exception {
    try (XWPFDocument document = open(file)) {
      assertEquals(
          Cautions.all(),
          document.getParagraphs().stream()
              .filter(p -> p.getStyle().equals("ListBullet"))
              .map(XWPFParagraph::getText)
              .toList());
    }
  }

  @Test
  void textOfOthersNeverBecomesAFieldOrALink() throws Exception {
    List<String> payloads =
        List.of(
            TablesFixture.FORMULA_NAME,
            "{ DDEAUTO c:\\\\windows\\\\system32\\\\cmd.exe \"/k calc\" }",
            "</w:t></w:r><w:fldSimple w:instr=\"AUTOEXEC\"/>",
            "control\u0000\u0007 and \uFFFE no character",
            "first line\nsecond line\r\nthird \u202e turned");
    for (String payload : payloads) {
      Path source = folder.resolve("p" + payloads.indexOf(payload));
      TablesFixture.open(source, 20, Map.of("region", payload));
      EditedTables.of(source, "funding").put(payload, row -> true, "funder").save();
      EditedTables.of(source, "properties")
          .put(payload, row -> row.contains("road"), "property_type")
          .save();
      Path docx = write(TablePackage.open(source), "p.docx");
      String xml = part(docx, "word/document.xml") + part(docx, "word/footer1.xml");
      assertFalse(xml.contains("<w:instrText") || xml.contains("<w:hyperlink"), payload);
      Matcher field = Pattern.compile("<w:fldSimple w:instr=\"([^\"]*)\"").matcher(xml);
      while (field.find()) {
        assertTrue(field.group(1).matches("SEQ (Table|Figure) .*|PAGE|NUMPAGES"), field.group(1));
      }
      try (XWPFDocument document = open(docx)) {
        assertTrue(document.getTables().size() >= 9);
      }
      try (ZipFile zip = new ZipFile(docx.toFile())) {
        assertTrue(zip.stream().noneMatch(e -> e.getName().contains("vbaProject")));
      }
      assertFalse(part(docx, "word/_rels/document.xml.rels").contains("External"));
    }
  }

  @Test
  void namesNoPartner() throws Exception {
    String xml = part(file, "word/document.xml");
    for (String partner :
        List.of("North Reach crew", TablesFixture.LONG_NAME, "Sedge &amp; Sons")) {
      assertFalse(xml.contains(partner), partner);
    }
  }

  @Test
  void sameTablesGiveTheSameBytesWhereverAndWhenever() throws Exception {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      Path other = write(tables, "other.docx");
      assertEquals(-1, Files.mismatch(file, other));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void fewTablesGiveAShortDocumentThatSaysWhatIsMissing() throws Exception {
    Path docx =
        write(TablesFixture.open(folder.resolve("few"), TablesFixture.only("devices")), "few.docx");
    try (XWPFDocument document = open(docx)) {
      String text =
          String.join("\n", document.getParagraphs().stream().map(p -> p.getText()).toList());
      assertTrue(
          text.contains("Not in these figures: how long devices last; properties protected"));
      assertTrue(text.contains("Cautions"));
      assertFalse(text.contains("Outcomes"));
    }
    Path none = write(TablesFixture.open(folder.resolve("none"), List.of()), "none.docx");
    try (XWPFDocument document = open(none)) {
      assertEquals(0, document.getTables().size());
    }
  }

  @Test
  void aPublicEditionWithoutPrivateColumnsIsWritten() throws Exception {
    Path source = folder.resolve("public");
    TablesFixture.open(source, 40, Map.of("period_year", "2025"));
    EditedTables.of(source, "funding").without("funder").save();
    EditedTables.of(source, "completeness").without("partner").save();
    EditedTables.of(source, "properties")
        .put("withheld", row -> true, "properties_protected", "property_years")
        .save();
    Path docx = write(TablePackage.open(source), "public.docx");
    try (XWPFDocument document = open(docx)) {
      assertTrue(
          Stream.of(document.getTables().toArray(XWPFTable[]::new))
              .anyMatch(table -> table.getText().contains("withheld")));
    }
  }

  /**
   * A chart that nearly fills a page stands at the end, so that the text before it fills its pages.
   */
  @Test
  void aTallChartStandsAtTheEnd() throws Exception {
    for (ChartFile chart : CHARTS) {
      PlainPicture.write(folder.resolve(chart.name() + ".png"), 40, 60);
    }
    Path written = folder.resolve("tall.docx");
    GrantDocument.write(tables, folder, CHARTS, written);
    for (ChartFile chart : CHARTS) {
      PlainPicture.write(folder.resolve(chart.name() + ".png"), 60, 40);
    }
    try (XWPFDocument document = open(written)) {
      List<String> texts = document.getParagraphs().stream().map(XWPFParagraph::getText).toList();
      int heading = texts.indexOf("Charts that fill a page");
      assertTrue(heading > texts.indexOf("Methods in short"), texts.toString());
      assertEquals(2, document.getAllPictures().size());
      assertEquals(heading + 1 + 2 * 2, texts.size());
      for (ChartFile chart : CHARTS.subList(0, 2)) {
        assertTrue(
            texts.stream().anyMatch(t -> t.startsWith("The chart \"" + chart.title())),
            chart.title());
      }
    }
  }
}
