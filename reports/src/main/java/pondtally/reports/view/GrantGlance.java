package pondtally.reports.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** The outcomes that applications ask for, each with its limits and its count, in one table. */
final class GrantGlance {

  private GrantGlance() {}

  static void addTo(List<GrantTable> shown, TablePackage tables) {
    GrantTable.Builder table =
        GrantTable.of(Messages.of("view.GrantGlance.outcomes-at-a-glance"))
            .words(Messages.of("view.GrantGlance.outcome"))
            .words(Messages.of("common.Figure"))
            .words(Messages.of("common.Based-on"));
    properties(tables, table);
    wetland(tables, table);
    removals(tables, table);
    survival(tables, table);
    failures(tables, table);
    unitCost(
        tables, table, "cash", Messages.of("view.GrantGlance.cost-of-a-protected-property-cash"));
    unitCost(
        tables,
        table,
        "cash-and-in-kind",
        Messages.of("view.GrantGlance.cost-of-a-protected-property-cash-2"));
    benefit(tables, table);
    table.addTo(
        shown,
        Messages.of("view.GrantGlance.one-row-for-each-outcome-the"),
        Messages.of("view.GrantGlance.likely-95-limits-quote-the-limits"));
  }

  private static void properties(TablePackage tables, GrantTable.Builder table) {
    Rows all =
        GrantOutcomes.whole(tables, "properties")
            .where("year", "all")
            .where("property_type", "all");
    all.first()
        .ifPresent(
            row ->
                table.row(
                    GrantCells.words(
                        Messages.of(
                            "view.GrantGlance.properties-protected-by-devices-verified-working")),
                    GrantCells.count(all, "properties_protected"),
                    Said.of("view.GrantGlance.on-record")
                        .cell(
                            "propertiesRecorded",
                            all,
                            Cells.count(row, "properties_recorded", "properties"),
                            "properties_recorded")
                        .build()));
  }

  private static void wetland(TablePackage tables, GrantTable.Builder table) {
    Rows all = GrantOutcomes.whole(tables, "wetland").where("year", "all");
    all.first()
        .ifPresent(
            row -> {
              Sentence measured = measured(all, row);
              table.row(
                  GrantCells.words(Messages.of("view.GrantGlance.wetland-kept-at-the-data-cut")),
                  GrantCells.cell(all, "acres_retained_verified", NumberText::acres),
                  measured);
              table.row(
                  GrantCells.words(
                      Messages.of("view.GrantGlance.wetland-kept-over-the-whole-record")),
                  GrantCells.cell(all, "acre_years", NumberText::acreYears),
                  measured);
            });
  }

  private static Sentence measured(Rows all, Row row) {
    if (GrantCells.number(all, "sites_measured").isEmpty()) {
      return GrantCells.words(
          Messages.of(
              "view.GrantGlance.sites-measured",
              Map.of("missing", GrantCells.missing(all, "sites_measured"))));
    }
    return Said.of("view.GrantGlance.measured-at-of")
        .cell("sitesMeasured", all, Cells.count(row, "sites_measured"), "sites_measured")
        .cell("sites", all, Cells.count(row, "sites", "sites"), "sites")
        .build();
  }

  private static void removals(TablePackage tables, GrantTable.Builder table) {
    Rows all = GrantOutcomes.whole(tables, "removals_avoided").where("evidence", "");
    Optional<String> latest =
        all.list().stream()
            .filter(row -> Cells.number(row, "avoided_computed").isPresent())
            .map(row -> row.text("year"))
            .max(String::compareTo);
    if (latest.isEmpty()) {
      return;
    }
    Rows year = all.where("year", latest.get());
    Sentence.Builder based =
        Sentence.of("")
            .cell(year, Cells.count(year.first().orElseThrow(), "sites", "sites"), "sites");
    GrantCells.above(year, "sites_left_out", 0)
        .ifPresent(
            left ->
                based
                    .say("; ")
                    .cell(year, NumberText.count((long) left), "sites_left_out")
                    .say(Messages.of("common.left-out")));
    table.row(
        GrantCells.words(
            Messages.of(
                "view.GrantGlance.removals-avoided-in-computed", Map.of("latest", latest.get()))),
        GrantCells.cell(year, "avoided_computed", v -> NumberText.decimal(v, 1)),
        based.build());
  }

  private static void survival(TablePackage tables, GrantTable.Builder table) {
    Rows all = GrantOutcomes.whole(tables, "survival_summary").where("method", SurvivalMethod.of());
    for (int years : SurvivalSentences.HORIZONS) {
      String column = "survival_" + years + "y";
      if (GrantCells.number(all, column).isPresent()) {
        table.row(
            GrantCells.words(
                Messages.of(
                    "view.GrantGlance.devices-that-go-without-a-failure",
                    Map.of("years", NumberText.years(years)))),
            GrantCells.estimate(
                all, Estimate::ofHundred, column, column + "_lower", column + "_upper"),
            Sentence.of("")
                .cell(all, Cells.count(all.first().orElseThrow(), "devices", "devices"), "devices")
                .say(", ")
                .cell(
                    all,
                    Cells.count(all.first().orElseThrow(), "failures", "first failures"),
                    "failures")
                .build());
        return;
      }
    }
  }

  private static void failures(TablePackage tables, GrantTable.Builder table) {
    Rows all = GrantOutcomes.whole(tables, "failure_rates").where("year", "all");
    all.first()
        .ifPresent(
            row ->
                table.row(
                    GrantCells.words(Messages.of("common.Failures-in-100-device-years")),
                    GrantCells.estimate(
                        all, Estimate::rate, "per_100_device_years", "lower", "upper"),
                    Said.of("view.GrantGlance.in")
                        .cell("failures", all, Cells.count(row, "failures", "failures"), "failures")
                        .cell(
                            "deviceYears",
                            all,
                            NumberText.measured(
                                Cells.number(row, "device_years").orElse(0), 0, "device-years"),
                            "device_years")
                        .build()));
  }

  private static void unitCost(
      TablePackage tables, GrantTable.Builder table, String basis, String name) {
    Rows all =
        GrantOutcomes.whole(tables, "cost_effectiveness")
            .where("year", "all")
            .where("measure", "per-property")
            .where("basis", basis);
    if (all.first().isPresent()) {
      table.row(
          GrantCells.words(name),
          GrantCells.estimate(all, Estimate::dollars, "value_usd", "lower", "upper"),
          GrantCost.basedOn(all, "properties"));
    }
  }

  private static void benefit(TablePackage tables, GrantTable.Builder table) {
    Rows all = GrantOutcomes.whole(tables, "benefit_cost").where("basis", "to-date");
    all.first()
        .ifPresent(
            row ->
                table.row(
                    GrantCells.words(
                        Messages.of("view.GrantGlance.damage-avoided-to-date-for-each")),
                    GrantCells.estimate(
                        all, Estimate::ratio, "ratio", "ratio_lower", "ratio_upper"),
                    Said.of("view.GrantGlance.with-damage-and-cost-on-record")
                        .cell("sites", all, Cells.count(row, "sites", "sites"), "sites")
                        .build()));
  }
}
