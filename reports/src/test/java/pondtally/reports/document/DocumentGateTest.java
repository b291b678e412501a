package pondtally.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.xwpf.usermodel.BodyElementType;
import org.apache.poi.xwpf.usermodel.IBodyElement;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.openxmlformats.schemas.drawingml.x2006.wordprocessingDrawing.CTInline;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.chart.ChartSet;
import pondtally.reports.fixture.Editions;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

/**
 * Whoever reads the document with a screen reader, or finds the way by headings, can do so in each
 * of its editions (headings, captions, alternative text and heading rows: ISO 14289-1 and the
 * Matterhorn protocol ask for them in what is printed from it).
 */
class DocumentGateTest {

  /** What a picture needs to be told in words at the least. */
  private static final int SHORTEST_ALTERNATIVE = 40;

  @TempDir static Path folder;

  static Stream<Arguments> editions() throws IOException {
    Path scope = folder.resolve("watershed");
    return Stream.of(
        Arguments.of("program", TablesFixture.open(folder.resolve("program"), 120)),
        Arguments.of("funder", Editions.funder(folder.resolve("funder"), 120)),
        Arguments.of(
            "watershed", TablesFixture.open(scope, 120, Map.of("scope_watershed", "99010203"))),
        Arguments.of("public", Editions.open(folder.resolve("public"), 120)),
        Arguments.of("small", TablesFixture.open(folder.resolve("small"), 2)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("editions")
  void theDocumentCanBeReadWithoutBeingSeen(String edition, TablePackage tables) throws Exception {
    Path charts = Files.createDirectories(folder.resolve(edition + "-charts"));
    List<ChartFile> made = ChartSet.write(tables, charts);
    Path file = folder.resolve(edition + ".docx");
    GrantDocument.write(tables, charts, made, file);
    try (XWPFDocument document = new XWPFDocument(Files.newInputStream(file))) {
      headings(document);
      int pictures = pictures(document);
      assertTrue(pictures >= 3, pictures + " pictures");
      assertEquals(pictures, document.getAllPictures().size());
      assertTrue(tables(document) >= 5, "tables");
    }
  }

  /** One title, then headings that never skip a level, each with words and something under it. */
  private static void headings(XWPFDocument document) {
    List<String> outline = new ArrayList<>();
    int level = 0;
    List<IBodyElement> body = document.getBodyElements();
    for (int i = 0; i < body.size(); i++) {
      int own = level(body.get(i));
      if (own >= 0) {
        assertTrue(own <= level + 1, "level " + own + " after " + level + ": " + outline);
        String text = ((XWPFParagraph) body.get(i)).getText();
        assertFalse(text.isBlank());
        assertFalse(outline.contains(own + text), text + " twice");
        outline.add(own + text);
        level = own;
        assertTrue(i + 1 < body.size() && level(body.get(i + 1)) != own, text + " stands empty");
      }
    }
    assertTrue(outline.get(0).startsWith("0"), "the title is first");
    assertEquals(1, outline.stream().filter(line -> line.startsWith("0")).count());
    assertTrue(outline.contains("1Cautions") && outline.contains("1Methods in short"));
  }

  /** 0 the title, 1 and 2 headings, else -1. */
  private static int level(IBodyElement element) {
    if (element.getElementType() != BodyElementType.PARAGRAPH) {
      return -1;
    }
    return switch (((XWPFParagraph) element).getStyle()) {
      case "Title" -> 0;
      case "Heading1" -> 1;
      case "Heading2" -> 2;
      default -> -1;
    };
  }

  private static int pictures(XWPFDocument document) {
    int pictures = 0;
    List<XWPFParagraph> paragraphs = document.getParagraphs();
    for (int i = 0; i < paragraphs.size(); i++) {
      for (var run : paragraphs.get(i).getCTP().getRList()) {
        for (var drawing : run.getDrawingList()) {
          CTInline inline = drawing.getInlineArray(0);
          String title = inline.getDocPr().getTitle();
          String told = inline.getDocPr().getDescr();
          assertFalse(title.isBlank());
          assertTrue(told.length() >= SHORTEST_ALTERNATIVE, title + ": " + told);
          pictures++;
          XWPFParagraph caption = paragraphs.get(i + 1);
          assertEquals("Caption", caption.getStyle(), title);
          assertTrue(caption.getCTP().getFldSimpleArray(0).getInstr().startsWith("SEQ Figure"));
          assertTrue(caption.getText().matches("(?s)Figure\u00a0.*\\. \\S.*"), caption.getText());
        }
      }
    }
    return pictures;
  }

  private static int tables(XWPFDocument document) {
    List<IBodyElement> body = document.getBodyElements();
    int tables = 0;
    for (int i = 0; i < body.size(); i++) {
      if (body.get(i) instanceof XWPFTable table) {
        tables++;
        assertEquals("TableCaption", ((XWPFParagraph) body.get(i - 1)).getStyle());
        assertTrue(table.getRow(0).isRepeatHeader(), table.getText());
        assertTrue(table.getCTTbl().getTblPr().getTblDescription().getVal().length() > 40);
        table
            .getRow(0)
            .getTableCells()
            .forEach(cell -> assertFalse(cell.getText().isBlank(), table.getText()));
      }
    }
    return tables;
  }
}
