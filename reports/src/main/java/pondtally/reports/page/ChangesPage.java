package pondtally.reports.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Cautions;
import pondtally.reports.view.ChangeSentences;
import pondtally.reports.view.Section;

/** {@code changes.html}: what changed between two runs, in one file. */
public final class ChangesPage {

  private ChangesPage() {}

  /**
   * Writes the page.
   *
   * @param tables the tables of a comparison
   * @throws IOException when the file cannot be written
   */
  public static void write(TablePackage tables, Path file) throws IOException {
    String title = ChangeSentences.title(tables);
    Html html = new Html();
    html.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").line();
    PageHead.write(html, title);
    html.line().open("body");
    html.element("a", Messages.of("common.Skip-to-the-report"), "class", "skip", "href", "#report");
    html.line().open("header").element("h1", title).close();
    html.line().open("div", "class", "columns");
    List<Section> sections = ChangeSentences.of(tables);
    contents(html, sections);
    html.line().open("main", "id", "report", "tabindex", "-1");
    for (int i = 0; i < sections.size(); i++) {
      html.line().open("section", "aria-labelledby", "part-" + i);
      html.element("h2", sections.get(i).heading(), "id", "part-" + i);
      SentenceHtml.paragraphs(html, sections.get(i).sentences());
      tables(tables, i).forEach(table -> TableHtml.write(html, table));
      html.close();
    }
    html.line().open("section", "aria-labelledby", "cautions");
    html.element("h2", Cautions.HEADING, "id", "cautions");
    Closing.cautions(html);
    html.close().close().close().close().close();
    Files.write(file, html.page().getBytes(StandardCharsets.UTF_8));
  }

  private static void contents(Html html, List<Section> sections) {
    html.line().open("nav", "aria-labelledby", "contents");
    html.element("h2", Messages.of("common.Contents"), "id", "contents").open("ul");
    for (int i = 0; i < sections.size(); i++) {
      html.line().open("li");
      html.element("a", sections.get(i).heading(), "href", "#part-" + i).close();
    }
    html.line().open("li").element("a", Cautions.HEADING, "href", "#cautions").close();
    html.close().close();
  }

  /** The tables of a section, by its place. */
  private static List<PageTable> tables(TablePackage tables, int section) {
    Messages say = Messages.reports();
    Stream<PageTable> found =
        switch (section) {
          case 1 ->
              Stream.of(
                  ChangeTables.figures(
                      tables, "changes", say.text("compare.table.program"), ChangeTables::isWhole),
                  ChangeTables.figures(
                      tables,
                      "changes",
                      say.text("compare.table.groups"),
                      ChangeTables::isPipeOrWatershed));
          case 2 ->
              Stream.of(
                  ChangeTables.settings(tables),
                  ChangeTables.rows(tables),
                  ChangeTables.files(tables),
                  ChangeTables.records(tables));
          default -> Stream.empty();
        };
    return found.filter(table -> !table.lines().isEmpty()).toList();
  }
}
