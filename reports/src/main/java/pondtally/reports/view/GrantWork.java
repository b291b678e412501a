package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.DateText;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.NumberText;

/** What the program built and looked after. */
final class GrantWork {

  private static final List<String> STATES =
      List.of("working", "reduced", "failed", "unverified", "retired");

  private GrantWork() {}

  static GrantSection of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>();
    List<GrantTable> shown = new ArrayList<>();
    Rows devices = Rows.of(tables, "devices");
    built(devices, tables, sentences);
    visited(tables, sentences);
    sentences.addAll(DeviceSentences.of(tables));
    states(devices, shown);
    years(tables, shown);
    return new GrantSection(1, "What was done", sentences, shown, Map.of());
  }

  private static void built(Rows devices, TablePackage tables, List<Sentence> sentences) {
    String from = tables.fact("period_from");
    String to = tables.fact("period_to");
    if (from.isEmpty()
        || to.isEmpty()
        || devices.list().isEmpty()
        || !devices.list().get(0).has("installed_on")) {
      return;
    }
    Rows built = devices.within("installed_on", from, to);
    int count = built.list().size();
    sentences.add(
        Sentence.of("In the reporting period, ")
            .fact("period_from", DateText.readable(from))
            .say(" to ")
            .fact("period_to", DateText.readable(to))
            .say(", crews put in ")
            .rows(built, NumberText.count(count, "devices"))
            .say(".")
            .build());
  }

  private static void visited(TablePackage tables, List<Sentence> sentences) {
    String name = tables.fact("period_year");
    Rows year = Rows.of(tables, "completeness").where("year", name);
    if (year.list().isEmpty()) {
      return;
    }
    sentences.add(
        Sentence.of("Of ")
            .sum(year, GrantCells.summed(year, "devices_expected"), "devices_expected")
            .say(" devices in service in " + name + ", ")
            .sum(year, GrantCells.summed(year, "devices_seen"), "devices_seen")
            .say(" were visited that year.")
            .build());
  }

  private static void states(Rows devices, List<GrantTable> shown) {
    GrantTable.Builder table =
        GrantTable.of("Devices by kind, and their state today")
            .words("Kind")
            .numbers("Devices", "Working", "Reduced flow", "Failed", "Unverified", "Retired");
    List<String> kinds =
        devices.list().stream().map(row -> row.text("kind")).distinct().sorted().toList();
    for (String kind : kinds) {
      stateRow(table, GroupText.words(kind), devices.where("kind", kind));
    }
    if (kinds.size() > 1) {
      stateRow(table, "All devices", devices);
    }
    table.addTo(
        shown,
        "One row for each kind of device and one for all: how many there are in each state.",
        "State at the last visit, after what was done there. Unverified: not looked at for more than twice the planned interval, or never; the state is not known.");
  }

  private static void stateRow(GrantTable.Builder table, String name, Rows devices) {
    List<Sentence> cells = new ArrayList<>();
    cells.add(GrantCells.words(name));
    cells.add(GrantCells.rows(devices));
    STATES.forEach(state -> cells.add(GrantCells.rows(devices.where("state", state))));
    table.row(cells.toArray(Sentence[]::new));
  }

  private static void years(TablePackage tables, List<GrantTable> shown) {
    Rows all = Rows.of(tables, "completeness");
    GrantTable.Builder table =
        GrantTable.of("Devices in service and visited, by year")
            .words("Year")
            .numbers("Devices in service", "Visited", "Not visited");
    all.list().stream()
        .map(row -> row.text("year"))
        .distinct()
        .sorted()
        .forEach(
            name -> {
              Rows year = all.where("year", name);
              table.row(
                  GrantCells.words(name),
                  GrantCells.sum(year, "devices_expected"),
                  GrantCells.sum(year, "devices_seen"),
                  GrantCells.sum(year, "devices_missing"));
            });
    table.addTo(
        shown,
        "One row for each year: devices in service, and how many of them were visited.",
        "A device that was not visited in a year counts as not seen, never as working.");
  }
}
