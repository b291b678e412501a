package pondtally.reports.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.DateText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Summary;

/** {@code report.html}: all that a reader wants in one file. */
public final class ReportPage {

  private ReportPage() {}

  /**
   * Writes the page. It holds everything it shows; only its links to {@code tables/} and {@code
   * charts/} lead to other files of the same report.
   *
   * @param tables all that it is made from
   * @param chartsFolder where the charts were written
   * @param charts the charts in reading order
   * @param file the file to write; the same tables and charts give the same bytes
   * @throws IOException when a chart cannot be read or the file cannot be written
   */
  public static void write(
      TablePackage tables, Path chartsFolder, List<ChartFile> charts, Path file)
      throws IOException {
    Html html = new Html();
    html.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").line();
    PageHead.write(html, tables);
    html.line().open("body");
    html.element("a", Messages.of("common.Skip-to-the-report"), "class", "skip", "href", "#report");
    List<Chapter> chapters = Chapter.all(tables, charts);
    top(html, tables);
    html.line().open("div", "class", "columns");
    Contents.write(html, tables, chapters);
    html.line().open("main", "id", "report", "tabindex", "-1");
    InShort.write(html, chapters);
    for (Chapter chapter : chapters) {
      chapter(html, tables, chapter, chartsFolder);
    }
    Closing.write(html, tables);
    html.close().close().close().close();
    Files.write(file, html.page().getBytes(StandardCharsets.UTF_8));
  }

  private static void top(Html html, TablePackage tables) {
    html.line().open("header");
    html.element("h1", Summary.title(tables));
    html.open("p").text(Messages.of("common.Records-up-to"));
    Closing.fact(html, "as_of", DateText.readable(tables.fact("as_of")));
    html.text(Messages.of("page.ReportPage.made-by-pondtally"));
    Closing.fact(html, "version", tables.fact("version"));
    html.text(Messages.of("page.ReportPage.from-the-tables-beside-this-page")).close().close();
  }

  private static void chapter(Html html, TablePackage tables, Chapter chapter, Path chartsFolder)
      throws IOException {
    html.line().open("section", "aria-labelledby", chapter.id());
    html.element("h2", chapter.heading(), "id", chapter.id());
    SentenceHtml.paragraphs(html, chapter.sentences());
    if (chapter.id().equals(Subject.DEVICES.id())) {
      SitesMap.write(html, tables);
    }
    for (ChartFile chart : chapter.charts()) {
      ChartHtml.write(html, chartsFolder, chart);
    }
    chapter.tables().forEach(table -> TableHtml.write(html, table));
    html.close();
  }
}
