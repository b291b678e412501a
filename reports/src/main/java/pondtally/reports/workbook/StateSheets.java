package pondtally.reports.workbook;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** Which devices work today: a count by state, the devices themselves, and the sites. */
final class StateSheets {

  private static final List<String> STATES =
      List.of("working", "reduced", "failed", "unverified", "retired");

  private StateSheets() {}

  static void states(Book book, TablePackage tables) {
    List<Row> devices = Rows.of(tables, "devices").list();
    TreeSet<String> kinds = new TreeSet<>();
    Map<String, Map<String, Integer>> counts = new TreeMap<>();
    for (Row device : devices) {
      kinds.add(device.text("kind"));
      Map<String, Integer> state =
          counts.computeIfAbsent(device.text("state"), s -> new TreeMap<>());
      state.merge("", 1, Integer::sum);
      state.merge(device.text("kind"), 1, Integer::sum);
    }
    List<Line> lines =
        Stream.concat(STATES.stream(), counts.keySet().stream().filter(s -> !STATES.contains(s)))
            .map(StateSheets::line)
            .toList();
    Columns columns =
        Columns.of(tables, "")
            .add("state", Messages.of("common.State"), Format.TEXT)
            .width(26)
            .add("devices", Messages.of("common.Devices"), Format.COUNT)
            .live(count(counts, ""))
            .total()
            .add("share", Messages.of("workbook.StateSheets.share-of-devices"), Format.SHARE)
            .live(share(counts, devices.size()));
    for (String kind : kinds) {
      if (!kind.isEmpty()) {
        columns.add(kind, words(kind), Format.COUNT).live(count(counts, kind)).total();
      }
    }
    book.add(
        TableSheet.of(
                Messages.of("workbook.StateSheets.state-of-devices"),
                title(tables),
                notes(tables),
                columns,
                lines)
            .withCharts(chart(lines.size())));
  }

  private static Line line(String state) {
    return Line.of(Map.of("state", state));
  }

  private static String words(String kind) {
    String text = GroupText.words(kind);
    return Character.toUpperCase(text.charAt(0)) + text.substring(1) + "s";
  }

  private static String title(TablePackage tables) {
    return Messages.of(
        "workbook.StateSheets.state-of-devices-on", Map.of("asOf", tables.fact("as_of")));
  }

  private static List<String> notes(TablePackage tables) {
    String days = tables.fact("revisit_every_days");
    String limit =
        days.isEmpty()
            ? ""
            : Messages.of(
                "workbook.StateSheets.days",
                Map.of("part", String.valueOf(2 * Long.parseLong(days))));
    return List.of(
        Messages.of(
            "workbook.StateSheets.counted-from-sheet-devices-unverified-nobody",
            Map.of("limit", limit)));
  }

  private static Formula count(Map<String, Map<String, Integer>> counts, String kind) {
    return Formula.of(
        refs -> countIfs(refs, kind),
        line ->
            OptionalDouble.of(
                counts.getOrDefault(line.text("state"), Map.of()).getOrDefault(kind, 0)));
  }

  private static String countIfs(Refs refs, String kind) {
    List<String> states = refs.elsewhere(Messages.of("common.Devices"), "state");
    List<String> kinds =
        kind.isEmpty() ? List.of() : refs.elsewhere(Messages.of("common.Devices"), "kind");
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < states.size(); i++) {
      text.append(i == 0 ? "" : "+").append("COUNTIFS(").append(states.get(i)).append(',');
      text.append(refs.cell("state"));
      if (!kind.isEmpty()) {
        text.append(',').append(kinds.get(i)).append(",\"").append(kind).append('"');
      }
      text.append(')');
    }
    return text.toString();
  }

  private static Formula share(Map<String, Map<String, Integer>> counts, int all) {
    return Formula.of(
        refs -> Formula.orUnknown(refs.cell("devices") + "/SUM(" + refs.column("devices") + ")"),
        line ->
            all == 0 || line.text("state").isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                    counts.getOrDefault(line.text("state"), Map.of()).getOrDefault("", 0)
                        / (double) all));
  }

  private static ChartPlan chart(int states) {
    return new ChartPlan(
        Messages.of("workbook.StateSheets.devices-by-state"),
        Messages.of("workbook.StateSheets.bars-number-of-devices-in-each"),
        ChartPlan.Kind.COLUMNS,
        Messages.of("common.State"),
        Messages.of("common.Devices"),
        "0",
        List.of(ChartPlan.Series.of(Messages.of("common.Devices"), "state", "devices", states)));
  }

  static void devices(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "devices")
            .add("device_id", "site_id", "partner", "watershed", "kind")
            .heading(Messages.of("common.kind-of-device"))
            .add("pipe", "state")
            .add("installed_on", "entry_on", "last_visit_on", "failures")
            .total()
            .add("first_failure_after_days", "first_failure_by_days", "verified_days")
            .total()
            .add("functional_days")
            .total();
    if (tables.table("devices").stream().anyMatch(table -> table.has("functional_days"))) {
      columns
          .add(
              "functional_share",
              Messages.of("workbook.StateSheets.functional-share-of-verified-days"),
              Format.SHARE)
          .live(Formula.ratio("functional_days", "verified_days", 1));
    }
    columns
        .add("build_items_met", "build_items_judged", "cost_recorded_usd")
        .total()
        .add("cost_estimated_usd")
        .total();
    book.add(
        TableSheet.of(
            Messages.of("common.Devices"),
            Messages.of("workbook.StateSheets.every-device-and-its-state"),
            List.of(),
            columns,
            Rows.of(tables, "devices").lines()));
  }

  static void sites(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "sites")
            .add("site_id", "partner", "watershed", "setting", "state", "devices")
            .total()
            .add("devices_functional")
            .total()
            .add("pond_id", "acres_retained", "properties", "total_usd")
            .total()
            .add("latitude", "longitude");
    book.add(
        TableSheet.of(
            Messages.of("common.Sites"),
            Messages.of("common.Sites-with-their-state"),
            List.of(Messages.of("common.Acres-are-those-of-the-site")),
            columns,
            Rows.of(tables, "sites").lines()));
  }
}
