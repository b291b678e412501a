package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.DateText;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
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
    return new GrantSection(1, Messages.of("common.What-was-done"), sentences, shown, Map.of());
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
        Said.of(
                count == 0
                    ? "view.GrantWork.no-install-in-the-reporting-period"
                    : "view.GrantWork.in-the-reporting-period-to-crews")
            .fact("periodFrom", "period_from", DateText.readable(from))
            .fact("periodTo", "period_to", DateText.readable(to))
            .rows("built", built, NumberText.count(count, "devices"))
            .build());
  }

  private static void visited(TablePackage tables, List<Sentence> sentences) {
    String name = tables.fact("period_year");
    Rows year = Rows.of(tables, "completeness").where("year", name);
    if (year.list().isEmpty()) {
      return;
    }
    sentences.add(
        Said.of("view.GrantWork.of-devices-in-service-in-were")
            .sum(
                "devicesExpected",
                year,
                GrantCells.summed(year, "devices_expected"),
                "devices_expected")
            .words("name", name)
            .sum("devicesSeen", year, GrantCells.summed(year, "devices_seen"), "devices_seen")
            .build());
  }

  private static void states(Rows devices, List<GrantTable> shown) {
    GrantTable.Builder table =
        GrantTable.of(Messages.of("view.GrantWork.devices-by-kind-and-their-state"))
            .words(Messages.of("common.Kind"))
            .numbers(
                Messages.of("common.Devices"),
                Messages.of("view.GrantWork.working"),
                Messages.of("view.GrantWork.reduced-flow"),
                Messages.of("common.Failed"),
                Messages.of("view.GrantWork.unverified"),
                Messages.of("view.GrantWork.retired"));
    List<String> kinds =
        devices.list().stream().map(row -> row.text("kind")).distinct().sorted().toList();
    for (String kind : kinds) {
      stateRow(table, GroupText.words(kind), devices.where("kind", kind));
    }
    if (kinds.size() > 1) {
      stateRow(table, Messages.of("common.All-devices"), devices);
    }
    table.addTo(
        shown,
        Messages.of("view.GrantWork.one-row-for-each-kind-of"),
        Messages.of("view.GrantWork.state-at-the-last-visit-after"));
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
        GrantTable.of(Messages.of("view.GrantWork.devices-in-service-and-visited-by"))
            .words(Messages.of("common.Year"))
            .numbers(
                Messages.of("view.GrantWork.devices-in-service"),
                Messages.of("view.GrantWork.visited"),
                Messages.of("view.GrantWork.not-visited"));
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
        Messages.of("view.GrantWork.one-row-for-each-year-devices"),
        Messages.of("view.GrantWork.a-device-that-was-not-visited"));
  }
}
