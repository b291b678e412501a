package pondtally.reports.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.table.TablePackage;

/** Pages of test tables, with charts that are quick to draw. */
final class PageFixture {

  private static final List<ChartFile> CHARTS =
      List.of(
          new ChartFile("survival", "A curve", "A curve falls."),
          new ChartFile("of-a-new-kind", "A chart that no chapter claims", "A line."));

  private PageFixture() {}

  /** The text of the page of these tables. */
  static String page(TablePackage tables, Path folder) throws IOException {
    Path charts = Files.createDirectories(folder.resolve("charts"));
    for (ChartFile chart : CHARTS) {
      Files.writeString(
          charts.resolve(chart.name() + ".svg"),
          """
          <?xml version="1.0" encoding="UTF-8"?>
          <svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="%1$s-title %1$s-desc" viewBox="0 0 468 100">
          <title id="%1$s-title">%2$s</title><desc id="%1$s-desc">%3$s</desc><rect width="468" height="100" fill="white"/>
          </svg>
          """
              .formatted(chart.name(), chart.title(), chart.description()));
    }
    Path file = folder.resolve("report.html");
    ReportPage.write(tables, charts, CHARTS, file);
    return Files.readString(file);
  }
}
