package pondtally.reports.workbook;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
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
            .add("state", "State", Format.TEXT)
            .width(26)
            .add("devices", "Devices", Format.COUNT)
            .live(count(counts, ""))
            .total()
            .add("share", "Share of devices", Format.SHARE)
            .live(share(counts, devices.size()));
    for (String kind : kinds) {
      if (!kind.isEmpty()) {
        columns.add(kind, words(kind), Format.COUNT).live(count(counts, kind)).total();
      }
    }
    book.add(
        TableSheet.of("State of devices", title(tables), notes(tables), columns, lines)
            .withCharts(chart(lines.size())));
  }

  private static Line line(String state) {
    return Line.of(Map.of("state", state));
  }

  private static String words(String kind) {
    String text = kind.replace('-', ' ');
    return Character.toUpperCase(text.charAt(0)) + text.substring(1) + "s";
  }

  private static String title(TablePackage tables) {
    return "State of devices on " + tables.fact("as_of");
  }

  private static List<String> notes(TablePackage tables) {
    String days = tables.fact("revisit_every_days");
    String limit = days.isEmpty() ? "" : " (" + 2 * Long.parseLong(days) + " days)";
    return List.of(
        "Counted from sheet Devices. Unverified: nobody has looked for more than twice the planned interval"
            + limit
            + ", or never. Such a device may work or not.");
  }

  private static Formula count(Map<String, Map<String, Integer>> counts, String kind) {
    return Formula.of(
        refs -> countIfs(refs, kind),
        line ->
            OptionalDouble.of(
                counts.getOrDefault(line.text("state"), Map.of()).getOrDefault(kind, 0)));
  }

  private static String countIfs(Refs refs, String kind) {
    List<String> states = refs.elsewhere("Devices", "state");
    List<String> kinds = kind.isEmpty() ? List.of() : refs.elsewhere("Devices", "kind");
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
        "Devices by state",
        "Bars: number of devices in each state. Figures: the table on this sheet.",
        ChartPlan.Kind.COLUMNS,
        "State",
        "Devices",
        "0",
        List.of(ChartPlan.Series.of("Devices", "state", "devices", states)));
  }

  static void devices(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "devices")
            .add("device_id", "site_id", "partner", "watershed", "kind", "pipe", "state")
            .add("installed_on", "entry_on", "last_visit_on", "failures")
            .total()
            .add("first_failure_after_days", "first_failure_by_days", "verified_days")
            .total()
            .add("functional_days")
            .total();
    if (tables.table("devices").stream().anyMatch(table -> table.has("functional_days"))) {
      columns
          .add("functional_share", "Functional share of verified days", Format.SHARE)
          .live(Formula.ratio("functional_days", "verified_days", 1));
    }
    columns
        .add("build_items_met", "build_items_judged", "cost_recorded_usd")
        .total()
        .add("cost_estimated_usd")
        .total();
    book.add(
        TableSheet.of(
            "Devices",
            "Every device and its state",
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
            "Sites",
            "Sites with their state",
            List.of(
                "Acres are those of the site's pond: two sites on one pond show the same acres, so they are not added up."),
            columns,
            Rows.of(tables, "sites").lines()));
  }
}
