package pondtally.reports.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.text.Messages;

/** A chart drawn inside the page; it brings its own title and description for those who hear it. */
final class ChartHtml {

  private ChartHtml() {}

  static void write(Html html, Path folder, ChartFile chart) throws IOException {
    String svg = Files.readString(folder.resolve(chart.name() + ".svg"), StandardCharsets.UTF_8);
    html.line().open("figure", "class", "card");
    html.open(
        "div", "class", "scroll", "tabindex", "0", "role", "group", "aria-label", chart.title());
    html.finished(svg.substring(svg.indexOf("<svg")));
    html.close();
    html.open("figcaption").text(Messages.of("page.ChartHtml.for-print-and-slides"));
    html.element("a", "charts/" + chart.name() + ".png", "href", "charts/" + chart.name() + ".png");
    html.text(", ");
    html.element("a", "charts/" + chart.name() + ".svg", "href", "charts/" + chart.name() + ".svg");
    html.close().close();
  }
}
