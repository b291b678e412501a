package pondtally.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.DateText;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;
import pondtally.reports.view.Rows;

/** Which devices work today, and the sites. */
final class StateTables {

  private static final List<String> STATES =
      List.of("working", "reduced", "failed", "unverified", "retired");

  private StateTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    return Stream.of(states(tables), sites(tables));
  }

  private static PageTable states(TablePackage tables) {
    Rows devices = Rows.of(tables, "devices");
    TreeSet<String> kinds = new TreeSet<>();
    TreeSet<String> others = new TreeSet<>();
    devices.list().forEach(row -> kinds.add(row.text("kind")));
    devices.list().forEach(row -> others.add(row.text("state")));
    STATES.forEach(others::remove);
    List<String> headings =
        new ArrayList<>(List.of(Messages.of("common.State"), Messages.of("common.Devices")));
    kinds.forEach(kind -> headings.add(heading(kind)));
    List<List<Cell>> lines = new ArrayList<>();
    Stream.concat(STATES.stream(), others.stream())
        .forEach(state -> lines.add(line(state, devices.where("state", state), kinds)));
    lines.add(line("all", devices, kinds));
    return new PageTable(
        Messages.of(
            "page.StateTables.devices-by-state",
            Map.of("asOf", DateText.readable(tables.fact("as_of")))),
        List.of(Messages.of("page.StateTables.unverified-nobody-has-looked-for-more")),
        headings,
        devices.list().isEmpty() ? List.of() : lines);
  }

  private static List<Cell> line(String state, Rows rows, TreeSet<String> kinds) {
    List<Cell> line = new ArrayList<>();
    line.add(
        Cell.words(
            state.equals("all") ? Messages.of("common.All-devices") : GroupText.words(state)));
    line.add(count(rows));
    kinds.forEach(kind -> line.add(count(rows.where("kind", kind))));
    return line;
  }

  private static Cell count(Rows rows) {
    return Cell.rows(rows, NumberText.count(rows.list().size()));
  }

  private static String heading(String kind) {
    if (kind.isEmpty()) {
      return Messages.of("page.StateTables.kind-not-recorded");
    }
    String words = GroupText.words(kind);
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static PageTable sites(TablePackage tables) {
    Rows sites = Rows.of(tables, "sites");
    Grid grid = Grid.of(tables, "sites", "site_id");
    if (sites.list().size() > Longest.LINES) {
      grid.note(Messages.of("page.StateTables.the-list-goes-on-in-program"));
    }
    return grid.note(Messages.of("common.Acres-are-those-of-the-site"))
        .head(Messages.of("common.Site"), "site_id", text -> text)
        .words(text -> text, "watershed")
        .words(GroupText::words, "setting", "state")
        .number(Shape.COUNT, "devices", "devices_functional")
        .number(Shape.TWO, "acres_retained")
        .number(Shape.COUNT, "properties")
        .number(Shape.DOLLARS, "total_usd")
        .build(Messages.of("common.Sites-with-their-state"), sites, Longest.of(sites))
        .fold();
  }
}
