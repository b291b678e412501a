package pondtally.reports.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;
import pondtally.reports.view.Cautions;
import pondtally.reports.view.DataSentences;
import pondtally.reports.view.Figure;
import pondtally.reports.view.Method;
import pondtally.reports.view.Rows;
import pondtally.reports.view.Setting;

/** The last chapters: cautions, methods, settings, and the tables behind the page. */
final class Closing {

  private Closing() {}

  /** Their ids and headings in order. */
  static Map<String, String> chapters(TablePackage tables) {
    Map<String, String> chapters = new LinkedHashMap<>();
    chapters.put("cautions", Cautions.HEADING);
    chapters.put("methods", Messages.of("common.How-the-figures-are-made"));
    chapters.put("settings", Messages.of("page.Closing.settings-and-assumptions"));
    chapters.put("tables", Messages.of("page.Closing.tables-and-fields"));
    return chapters;
  }

  static void write(Html html, TablePackage tables) {
    chapters(tables)
        .forEach(
            (id, heading) -> {
              html.line().open("section", "aria-labelledby", id).element("h2", heading, "id", id);
              switch (id) {
                case "cautions" -> cautions(html);
                case "methods" -> methods(html, tables);
                case "settings" -> settings(html, tables);
                default -> files(html, tables);
              }
              html.close();
            });
  }

  /** A fact of the run, marked as such. */
  static void fact(Html html, String name, String printed) {
    Figure figure = new Figure("", Map.of(), Figure.How.FACT, List.of(name), printed);
    html.element("span", printed, Source.attributes(figure));
  }

  static void cautions(Html html) {
    html.open("ul", "class", "cautions");
    Cautions.all().forEach(caution -> html.line().element("li", caution));
    html.close();
  }

  private static void methods(Html html, TablePackage tables) {
    html.open("dl");
    for (Method method : Method.all(tables)) {
      html.line().element("dt", method.subject());
      html.open("dd").text(method.text() + " ");
      html.element(
              "span",
              Messages.of("page.Closing.source", Map.of("source", method.source())),
              "class",
              "source")
          .close();
    }
    html.close();
  }

  private static void settings(Html html, TablePackage tables) {
    List<List<Cell>> lines =
        Setting.all(tables).stream().map(setting -> line(setting, tables)).toList();
    TableHtml.write(
        html,
        new PageTable(
            Messages.of("page.Closing.settings-of-this-run-and-constants"),
            List.of(
                Messages.of(
                    "page.Closing.where-no-value-stands-the-setting",
                    Map.of(
                        "part",
                        DataSentences.hasReasons(tables)
                            ? Messages.of("page.Closing.every-input-file-and-its-sha")
                            : ""))),
            List.of(
                Messages.of("common.Setting"),
                Messages.of("common.Value"),
                Messages.of("common.Unit"),
                Messages.of("common.Meaning")),
            1,
            lines,
            false));
  }

  private static List<Cell> line(Setting setting, TablePackage tables) {
    String name = setting.cellName().toLowerCase(Locale.ROOT);
    Cell value =
        tables.facts().containsKey(name)
            ? new Cell(
                yesNo(setting.value()),
                java.util.Optional.of(
                    new Figure(
                        "", Map.of(), Figure.How.FACT, List.of(name), yesNo(setting.value()))),
                false)
            : Cell.words(setting.value());
    return List.of(
        Cell.words(setting.label()),
        value,
        Cell.words(setting.unit()),
        Cell.words(setting.meaning()));
  }

  private static String yesNo(String value) {
    return switch (value) {
      case "true" -> Messages.of("common.yes");
      case "false" -> Messages.of("common.no");
      default -> value;
    };
  }

  private static void files(Html html, TablePackage tables) {
    html.open("p").text(Messages.of("page.Closing.every-figure-on-this-page-stands"));
    html.text(Messages.of("page.Closing.what-each-column-means-with-its"));
    html.element("a", "tables/datapackage.json", "href", "tables/datapackage.json");
    html.text(Messages.of("page.Closing.and-on-the-last-sheet-of"));
    html.element("a", "program.xlsx", "href", "program.xlsx").text(".").close();
    html.open("ul", "class", "files");
    for (Table table : tables.tables()) {
      html.line().open("li");
      String path = "tables/" + table.name() + ".csv";
      html.element("a", path, "href", path).text(": " + table.title() + ", ");
      Rows rows = Rows.of(tables, table.name());
      String printed = NumberText.count(table.rows().size(), "rows");
      html.element(
          "span",
          printed,
          Source.attributes(
              new Figure(rows.table(), rows.key(), Figure.How.ROWS, List.of(), printed)));
      html.close();
    }
    html.close();
  }
}
