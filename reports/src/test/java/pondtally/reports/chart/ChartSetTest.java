package pondtally.reports.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.ImageInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import pondtally.reports.table.TablePackage;

class ChartSetTest {

  /** Nine inches: the text height of a letter page. */
  private static final double PAGE_POINTS = 648;

  private final Locale before = Locale.getDefault();

  @TempDir Path folder;

  @AfterEach
  void restore() {
    Locale.setDefault(before);
  }

  private TablePackage usual() throws Exception {
    return InventedProgram.usual().open(folder.resolve("tables"));
  }

  @Test
  void everySubjectHasItsChartInReadingOrder() throws Exception {
    List<ChartFile> charts = ChartSet.write(usual(), folder.resolve("charts"));
    assertEquals(
        List.of(
            "survival",
            "survival-by-pipe",
            "cumulative-incidence",
            "failure-causes",
            "failure-rates-by-pipe",
            "failure-rates-by-watershed",
            "watershed-funnel",
            "repeat-failures",
            "hazard-ratios",
            "cost-per-property",
            "benefit-cost-sensitivity",
            "acre-years",
            "removals-avoided",
            "season-forecast"),
        charts.stream().map(ChartFile::name).toList());
    for (ChartFile chart : charts) {
      assertTrue(Files.size(folder.resolve("charts").resolve(chart.name() + ".png")) > 1000);
      assertTrue(chart.description().startsWith(chart.title()), chart.name());
    }
  }

  @Test
  void theSameTablesGiveTheSameBytesWhateverTheLanguageOfTheMachine() throws Exception {
    TablePackage tables = usual();
    List<ChartFile> charts = ChartSet.write(tables, folder.resolve("once"));
    Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
    ChartSet.write(tables, folder.resolve("twice"));
    for (ChartFile chart : charts) {
      for (String ending : List.of(".svg", ".png")) {
        String file = chart.name() + ending;
        assertArrayEquals(
            Files.readAllBytes(folder.resolve("once").resolve(file)),
            Files.readAllBytes(folder.resolve("twice").resolve(file)),
            file);
      }
    }
  }

  @Test
  void svgSpeaksItsTitleAndDescriptionAndFitsBesideOthersInOnePage() throws Exception {
    List<ChartFile> charts = ChartSet.write(usual(), folder.resolve("charts"));
    Set<String> ids = new HashSet<>();
    for (ChartFile chart : charts) {
      Path file = folder.resolve("charts").resolve(chart.name() + ".svg");
      assertFalse(Files.readString(file).contains("<!DOCTYPE"), "a document type names a host");
      Element root = parse(file);
      assertEquals("img", root.getAttribute("role"));
      assertEquals(chart.title(), only(root, "title").getTextContent());
      assertEquals(chart.description(), only(root, "desc").getTextContent());
      assertEquals(
          only(root, "title").getAttribute("id") + " " + only(root, "desc").getAttribute("id"),
          root.getAttribute("aria-labelledby"));
      NodeList all = root.getElementsByTagName("*");
      for (int i = 0; i < all.getLength(); i++) {
        String id = ((Element) all.item(i)).getAttribute("id");
        assertTrue(id.isEmpty() || ids.add(id), "twice: " + id);
      }
    }
  }

  @Test
  void letteringIsLargeEnoughAndInsideTheFigure() throws Exception {
    for (TestTables program :
        List.of(
            InventedProgram.usual(),
            InventedProgram.fourPipes(),
            InventedProgram.oneGroup(),
            InventedProgram.withoutFailures(),
            InventedProgram.large())) {
      Path tables = Files.createTempDirectory(folder, "tables");
      Path charts = Files.createTempDirectory(folder, "charts");
      for (Figure figure : ChartSet.figures(program.open(tables))) {
        Path file = charts.resolve(figure.name() + ".svg");
        SvgFile.write(figure, file);
        assertTrue(new FigureDrawing(figure).height() <= PAGE_POINTS, figure.name());
        checkTexts(figure.name(), parse(file), new FigureDrawing(figure).height());
      }
    }
  }

  private static void checkTexts(String name, Element root, double height) {
    NodeList texts = root.getElementsByTagName("text");
    assertTrue(texts.getLength() > 2, name);
    for (int i = 0; i < texts.getLength(); i++) {
      Element text = (Element) texts.item(i);
      String said = name + ": " + text.getTextContent();
      double x = Double.parseDouble(text.getAttribute("x"));
      double y = Double.parseDouble(text.getAttribute("y"));
      String length = text.getAttribute("textLength");
      assertTrue(fontSize(text) >= 8, said);
      assertTrue(x >= -0.01, said);
      assertTrue(
          x + (length.isEmpty() ? 0 : Double.parseDouble(length)) <= FigureDrawing.WIDTH + 0.01,
          said);
      assertTrue(y > fontSize(text) * 0.7 && y < height, said);
    }
  }

  private static double fontSize(Element element) {
    String size = element.getAttribute("font-size");
    return size.isEmpty()
        ? fontSize((Element) element.getParentNode())
        : Double.parseDouble(size.replace("px", ""));
  }

  @Test
  void pngHasThreeHundredDotsPerInch() throws Exception {
    ChartSet.write(usual(), folder.resolve("charts"));
    Path file = folder.resolve("charts").resolve("survival.png");
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      ImageReader reader = ImageIO.getImageReaders(in).next();
      reader.setInput(in);
      assertEquals(1950, reader.getWidth(0), "6.5 in at 300 dots per inch");
      IIOMetadata metadata = reader.getImageMetadata(0);
      Element tree = (Element) metadata.getAsTree("javax_imageio_png_1.0");
      Element resolution = (Element) tree.getElementsByTagName("pHYs").item(0);
      assertEquals("11811", resolution.getAttribute("pixelsPerUnitXAxis"), "300 / 0.0254");
      assertEquals("11811", resolution.getAttribute("pixelsPerUnitYAxis"));
      assertEquals("meter", resolution.getAttribute("unitSpecifier"));
    }
  }

  @Test
  void withoutATableOrWithoutItsRowsThereIsNoChart() throws Exception {
    TestTables tables =
        new TestTables().fact("as_of", "2026-03-31").table("survival_curves").table("wetland");
    assertEquals(
        List.of(), ChartSet.write(tables.open(folder.resolve("tables")), folder.resolve("charts")));
  }

  @Test
  void aChartWithNothingToShowSaysWhy() throws Exception {
    TestTables tables =
        new TestTables()
            .fact("as_of", "2026-03-31")
            .row(
                "failure_rates",
                "grouping",
                "pipe",
                "group",
                "dual 12 in",
                "year",
                "all",
                "withheld_reason",
                "fewer than 5 sites")
            .row(
                "failure_causes", "grouping", "all", "group", "all", "cause", "ice", "failures", 0);
    List<Figure> figures = ChartSet.figures(tables.open(folder.resolve("tables")));
    assertEquals(
        List.of(
            "No failure is recorded, so there is no cause.",
            "No rate is drawn: every group is withheld or not known."),
        figures.stream().map(figure -> figure.foot().get(0)).toList());
    assertTrue(figures.stream().allMatch(figure -> figure.panels().isEmpty()));
  }

  private static Element parse(Path file) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    Document document = factory.newDocumentBuilder().parse(file.toFile());
    return document.getDocumentElement();
  }

  private static Element only(Element root, String tag) {
    NodeList found = root.getElementsByTagName(tag);
    assertEquals(1, found.getLength(), tag);
    return (Element) found.item(0);
  }
}
