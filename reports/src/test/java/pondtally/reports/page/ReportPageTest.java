package pondtally.reports.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.PrintedCell;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Cautions;

class ReportPageTest {

  @TempDir Path folder;

  @Test
  void everyPrintedFigureIsInTheCellThatItNames() throws Exception {
    TablePackage tables = TablesFixture.open(folder.resolve("tables"), 60);
    List<Element> marked = marked(parsed(PageFixture.page(tables, folder)));
    marked.forEach(element -> PrintedCell.of(element).check(tables));
    assertTrue(marked.size() > 1200, marked.size() + " figures");
  }

  @Test
  void everyNumberInTheBodyOfATableNamesItsCell() throws Exception {
    Document page = page(60);
    int numbers = 0;
    for (Element cell : elements(page, "td")) {
      // The last cell may explain its row in words, as what a constant is.
      boolean words =
          cell.getParentNode().getLastChild() == cell
              && !cell.getAttribute("class").equals("number");
      boolean constant = cell.getParentNode().getTextContent().contains("Constant: ");
      if (cell.getTextContent().matches("(?s).*\\d.*") && !words && !constant) {
        assertTrue(cell.hasAttribute("data-cell"), cell.getTextContent());
        numbers++;
      }
    }
    assertTrue(numbers > 800, numbers + " numbers");
  }

  @Test
  void thePageIsBuiltForEveryReader() throws Exception {
    Document page = page(60);
    assertEquals("en", page.getDocumentElement().getAttribute("lang"));
    assertEquals(1, elements(page, "h1").size());
    assertEquals(1, elements(page, "main").size());
    for (Element table : elements(page, "table")) {
      assertEquals(1, table.getElementsByTagName("caption").getLength());
    }
    for (Element heading : elements(page, "th")) {
      assertTrue(Set.of("col", "row").contains(heading.getAttribute("scope")));
    }
    for (Element drawing : elements(page, "svg")) {
      boolean decoration = drawing.getAttribute("aria-hidden").equals("true");
      assertTrue(decoration || drawing.getElementsByTagName("desc").getLength() == 1);
    }
    assertEquals("#report", elements(page, "a").get(0).getAttribute("href"));
  }

  @Test
  void linksLeadToThisPageOrToFilesBesideIt() throws Exception {
    Document page = page(60);
    Set<String> ids = new HashSet<>();
    for (Element element : elements(page, "*")) {
      String id = element.getAttribute("id");
      assertTrue(id.isEmpty() || ids.add(id), "twice: " + id);
      assertFalse(element.hasAttribute("src"), element.getTagName());
    }
    for (Element link : elements(page, "a")) {
      String to = link.getAttribute("href");
      assertTrue(
          to.startsWith("#")
              ? ids.contains(to.substring(1))
              : to.matches("tables/.*|charts/.*|program\\.xlsx"),
          to);
    }
    assertEquals(0, elements(page, "script").size());
  }

  @Test
  void aListThatIsCutSaysSo() throws Exception {
    TablePackage tables = TablesFixture.open(folder.resolve("tables"), 1_000);
    String page = PageFixture.page(tables, folder);
    assertTrue(page.contains("The list goes on in program.xlsx and tables/sites.csv."));
    assertFalse(
        PageFixture.page(TablesFixture.open(folder.resolve("few"), 60), folder)
            .contains("goes on in program.xlsx and tables/sites.csv"));
  }

  @Test
  void theRowOfAllKindsStandsUnderTheKinds() throws Exception {
    String page = PageFixture.page(TablesFixture.open(folder.resolve("kinds"), 20), folder);
    int total = page.indexOf("all kinds");
    assertTrue(total > 0);
    assertTrue(page.lastIndexOf(">travel<", total) > page.lastIndexOf("<table", total));
  }

  @Test
  void cautionsAndChartsAreAllThere() throws Exception {
    String text = page(60).getDocumentElement().getTextContent();
    Cautions.all().forEach(caution -> assertTrue(text.contains(caution), caution));
    assertTrue(text.contains("A chart that no chapter claims"));
    assertTrue(text.contains("More charts"));
  }

  @Test
  void everySectionOfTheSummaryHasItsChapter() throws Exception {
    assertFalse(
        elements(page(60), "section").stream()
            .anyMatch(section -> section.getAttribute("aria-labelledby").matches("more-\\d+")));
  }

  @Test
  void namesThatWouldBeMarkupAreText() throws Exception {
    TablesFixture.open(folder.resolve("tables"), 20);
    String hostile = "</caption><script>alert(1)</script>&amp;\u0007";
    EditedTables.of(folder.resolve("tables"), "row_account")
        .put(hostile, row -> row.contains("North Reach crew"), "partner")
        .save();
    Document page = parsed(PageFixture.page(TablePackage.open(folder.resolve("tables")), folder));
    assertEquals(0, elements(page, "script").size());
    assertTrue(
        page.getDocumentElement()
            .getTextContent()
            .contains("</caption><script>alert(1)</script>&amp;\ufffd"));
  }

  @Test
  void withheldFiguresStandAsAWordAndMissingOnesAsASign() throws Exception {
    Path tables = folder.resolve("tables");
    TablesFixture.open(tables, 20);
    EditedTables.of(tables, "failure_rates")
        .put(
            "withheld",
            row -> row.contains("99020101"),
            "devices",
            "failures",
            "device_years",
            "per_100_device_years",
            "lower",
            "upper")
        .save();
    EditedTables.of(tables, "sites").without("latitude").without("longitude").save();
    EditedTables.of(tables, "row_account").without("partner").save();
    TablePackage opened = TablePackage.open(tables);
    Document page = parsed(PageFixture.page(opened, folder));
    marked(page).forEach(element -> PrintedCell.of(element).check(opened));
    List<String> cells = elements(page, "td").stream().map(Element::getTextContent).toList();
    assertTrue(cells.stream().filter("withheld"::equals).count() >= 4);
    assertTrue(cells.contains("\u2013not known"));
    String text = page.getDocumentElement().getTextContent();
    assertTrue(text.contains("no site has coordinates"));
  }

  @Test
  void tablesThatTheRunDidNotMakeAreLeftOut() throws Exception {
    for (String name : List.of("devices", "sites", "costs", "wetland", "failure_rates")) {
      Path own = folder.resolve(name);
      TablePackage tables = TablesFixture.open(own.resolve("tables"), TablesFixture.only(name));
      assertEquals(1, elements(parsed(PageFixture.page(tables, own)), "h1").size());
    }
    Path none = folder.resolve("none");
    TablePackage empty =
        TablesFixture.open(
            none.resolve("tables"),
            TablesFixture.empty("devices", "sites", "costs", "row_account", "survival_summary"));
    assertEquals(1, elements(parsed(PageFixture.page(empty, none)), "h1").size());
  }

  @Test
  void theSameTablesGiveTheSameBytesWhateverTheLanguage() throws Exception {
    TablePackage tables = TablesFixture.open(folder.resolve("tables"), 60);
    String first = PageFixture.page(tables, folder);
    Locale before = Locale.getDefault();
    try {
      for (String language : List.of("de-DE", "tr-TR", "ar-EG")) {
        Locale.setDefault(Locale.forLanguageTag(language));
        assertEquals(first, PageFixture.page(tables, folder));
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private Document page(int devices) throws Exception {
    return parsed(PageFixture.page(TablesFixture.open(folder.resolve("tables"), devices), folder));
  }

  private static Document parsed(String page) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(page)));
  }

  private static List<Element> marked(Document page) {
    return elements(page, "*").stream().filter(e -> e.hasAttribute("data-cell")).toList();
  }

  private static List<Element> elements(Document page, String tag) {
    NodeList found = page.getElementsByTagName(tag);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }
}
