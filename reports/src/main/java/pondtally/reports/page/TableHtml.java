package pondtally.reports.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** A page table with caption, scopes and, where it is long, a fold. */
final class TableHtml {

  /** Stands where a figure is not known; the legend says so. */
  static final String NOT_KNOWN = "\u2013";

  /** Words up to this many letters stay on one line. */
  private static final int SHORT = 34;

  private TableHtml() {}

  static void write(Html html, PageTable table) {
    html.line();
    if (table.folded()) {
      html.open("details");
      html.open("summary").text(table.caption());
      html.element("span", " " + NumberText.count(table.lines().size(), "rows"), "class", "size");
      html.close();
      inside(html, table);
      html.close();
    } else {
      inside(html, table);
    }
  }

  private static void inside(Html html, PageTable table) {
    html.open("div", "class", "table");
    // A wide table scrolls by itself; the keyboard must be able to reach it.
    html.open(
        "div", "class", "scroll", "tabindex", "0", "role", "group", "aria-label", table.caption());
    html.open("table");
    html.element("caption", table.caption());
    headings(html, table);
    html.open("tbody");
    table.lines().forEach(line -> line(html, table.heads(), line));
    html.close().close().close();
    for (String note : table.notes()) {
      html.element("p", note, "class", "note");
    }
    html.close();
  }

  private static void headings(Html html, PageTable table) {
    html.open("thead").open("tr");
    for (int i = 0; i < table.headings().size(); i++) {
      int column = i;
      boolean number = table.lines().stream().allMatch(line -> line.get(column).number());
      html.element(
          "th", table.headings().get(i), "scope", "col", "class", number ? "number" : "words");
    }
    html.close().close();
  }

  private static void line(Html html, int heads, List<Cell> cells) {
    html.line().open("tr");
    for (int i = 0; i < cells.size(); i++) {
      cell(html, cells.get(i), i < heads);
    }
    html.close();
  }

  private static void cell(Html html, Cell cell, boolean head) {
    List<String> attributes = new ArrayList<>();
    if (head) {
      attributes.addAll(List.of("scope", "row"));
    }
    String look = cell.number() ? "number" : cell.text().length() <= SHORT ? "short-text" : "";
    if (!look.isEmpty()) {
      attributes.addAll(List.of("class", look));
    }
    Optional<String[]> source = cell.figure().map(Source::attributes);
    source.map(Arrays::asList).ifPresent(attributes::addAll);
    html.open(head ? "th" : "td", attributes.toArray(String[]::new));
    if (cell.text().isEmpty() && cell.figure().isPresent()) {
      notKnown(html);
    } else {
      printed(html, cell);
    }
    html.close();
  }

  private static void notKnown(Html html) {
    html.element("span", NOT_KNOWN, "aria-hidden", "true");
    html.element("span", Missing.NOT_KNOWN, "class", "heard");
  }

  /** The limits of an estimate stand on a line of their own below it. */
  private static void printed(Html html, Cell cell) {
    int limits = cell.number() ? cell.text().indexOf(" (") : -1;
    if (limits < 0) {
      html.text(cell.text());
    } else {
      html.text(cell.text().substring(0, limits + 1));
      html.element("span", cell.text().substring(limits + 1), "class", "limits");
    }
  }
}
