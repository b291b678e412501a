package pondtally.reports.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.app.ComparedRuns;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.chart.ChartSet;
import pondtally.reports.fixture.Browser;
import pondtally.reports.fixture.Editions;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

/**
 * The page in a browser: axe-core (Web Content Accessibility Guidelines 2, levels A and AA, and its
 * best practices) finds nothing, and nothing is asked of any host.
 */
class PageGateTest {

  @TempDir Path folder;

  @Test
  void nothingIsFoundOnAWideLightPage() throws Exception {
    Browser.needed();
    List<String> audit = Browser.audit(page(), folder.resolve("audit"), "--window-size=1280,1000");
    assertClean(audit);
    assertTrue(audit.contains("DARK false"), audit.toString());
  }

  @Test
  void nothingIsFoundOnANarrowDarkPage() throws Exception {
    Browser.needed();
    List<String> audit =
        Browser.audit(
            page(), folder.resolve("audit"), "--window-size=500,1000", "--force-dark-mode");
    assertClean(audit);
    assertTrue(audit.contains("DARK true"), audit.toString());
  }

  /** The public edition, one funder's report and a comparison. */
  @Test
  void nothingIsFoundOnTheOtherPages() throws Exception {
    Browser.needed();
    TablePackage open = Editions.open(folder.resolve("editions"), 30);
    TablePackage funder = Editions.funder(folder.resolve("funder"), 30);
    Path changes = ComparedRuns.write(folder.resolve("runs")).resolve("changes.html");
    Map<String, String> pages =
        Map.of(
            "public", PageFixture.page(open, folder.resolve("public")),
            "one-funder", PageFixture.page(funder, folder.resolve("one")),
            "changes", Files.readString(changes));
    for (Map.Entry<String, String> page : new TreeMap<>(pages).entrySet()) {
      assertClean(
          Browser.audit(
              page.getValue(), folder.resolve("audit-" + page.getKey()), "--window-size=390,900"));
    }
  }

  /** The gate is shown failing on faults and a request that are planted. */
  @Test
  void plantedFaultsAreFound() throws Exception {
    Browser.needed();
    TablePackage tables = TablesFixture.open(folder.resolve("tables"), TablesFixture.empty());
    String planted =
        PageFixture.page(tables, folder)
            .replace(
                "</main>",
                "<img src=\"http://127.0.0.1:9/pixel.png\"/><p style=\"color:#ddd;background:#fff\">pale</p></main>");
    List<String> audit = Browser.audit(planted, folder.resolve("audit"));
    assertFound(audit, "VIOLATION image-alt");
    assertFound(audit, "VIOLATION color-contrast");
    assertFound(audit, "REQUEST http://127.0.0.1:9/pixel.png");
  }

  private String page() throws Exception {
    TablePackage tables = TablesFixture.open(folder.resolve("tables"), 60);
    Path charts = folder.resolve("charts");
    List<ChartFile> drawn = ChartSet.write(tables, charts);
    Path file = folder.resolve("report.html");
    ReportPage.write(tables, charts, drawn, file);
    return Files.readString(file);
  }

  private static void assertClean(List<String> audit) {
    int rules = Integer.parseInt(audit.get(0).replace("CHECKED ", ""));
    assertTrue(rules > 25, audit.toString());
    List<String> faults = new ArrayList<>(audit);
    faults.removeIf(line -> line.startsWith("CHECKED ") || line.startsWith("DARK "));
    assertEquals(List.of(), faults);
  }

  private static void assertFound(List<String> audit, String start) {
    assertTrue(audit.stream().anyMatch(line -> line.startsWith(start)), audit.toString());
  }
}
