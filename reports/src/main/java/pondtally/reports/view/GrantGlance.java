package pondtally.reports.view;

import java.util.List;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.NumberText;

/** The outcomes that applications ask for, each with its limits and its count, in one table. */
final class GrantGlance {

  private GrantGlance() {}

  static void addTo(List<GrantTable> shown, TablePackage tables) {
    GrantTable.Builder table =
        GrantTable.of("Outcomes at a glance").words("Outcome").words("Figure").words("Based on");
    properties(tables, table);
    wetland(tables, table);
    removals(tables, table);
    survival(tables, table);
    failures(tables, table);
    unitCost(tables, table, "cash", "Cost of a protected property, cash alone");
    unitCost(
        tables, table, "cash-and-in-kind", "Cost of a protected property, cash and in-kind value");
    benefit(tables, table);
    table.addTo(
        shown,
        "One row for each outcome: the figure with its limits, and what it is based on.",
        "Likely: 95% limits. Quote the limits and the count with the figure.");
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
                    GrantCells.words("Properties protected by devices verified working"),
                    GrantCells.count(all, "properties_protected"),
                    Sentence.of("")
                        .cell(
                            all,
                            Cells.count(row, "properties_recorded", "properties"),
                            "properties_recorded")
                        .say(" on record")
                        .build()));
  }

  private static void wetland(TablePackage tables, GrantTable.Builder table) {
    Rows all = GrantOutcomes.whole(tables, "wetland").where("year", "all");
    all.first()
        .ifPresent(
            row -> {
              Sentence measured = measured(all, row);
              table.row(
                  GrantCells.words("Wetland kept at the data cut, verified"),
                  GrantCells.cell(all, "acres_retained_verified", NumberText::acres),
                  measured);
              table.row(
                  GrantCells.words("Wetland kept over the whole record"),
                  GrantCells.cell(all, "acre_years", NumberText::acreYears),
                  measured);
            });
  }

  private static Sentence measured(Rows all, Row row) {
    if (GrantCells.number(all, "sites_measured").isEmpty()) {
      return GrantCells.words("sites measured: " + GrantCells.missing(all, "sites_measured"));
    }
    return Sentence.of("measured at ")
        .cell(all, Cells.count(row, "sites_measured"), "sites_measured")
        .say(" of ")
        .cell(all, Cells.count(row, "sites", "sites"), "sites")
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
    GrantCells.number(year, "sites_left_out")
        .ifPresent(
            left ->
                based
                    .say("; ")
                    .cell(year, NumberText.count((long) left), "sites_left_out")
                    .say(" left out"));
    table.row(
        GrantCells.words("Removals avoided in " + latest.get() + ", computed"),
        GrantCells.cell(year, "avoided_computed", v -> NumberText.decimal(v, 1)),
        based.build());
  }

  private static void survival(TablePackage tables, GrantTable.Builder table) {
    Rows all = GrantOutcomes.whole(tables, "survival_summary").where("method", SurvivalMethod.of());
    for (int years : SurvivalSentences.HORIZONS) {
      String column = "survival_" + years + "y";
      if (GrantCells.number(all, column).isPresent()) {
        table.row(
            GrantCells.words("Devices that go " + NumberText.years(years) + " without a failure"),
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
                    GrantCells.words("Failures in 100 device-years"),
                    GrantCells.estimate(
                        all, Estimate::rate, "per_100_device_years", "lower", "upper"),
                    Sentence.of("")
                        .cell(all, Cells.count(row, "failures", "failures"), "failures")
                        .say(" in ")
                        .cell(
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
                    GrantCells.words("Damage avoided to date for each dollar spent, in dollars"),
                    GrantCells.estimate(
                        all, Estimate::ratio, "ratio", "ratio_lower", "ratio_upper"),
                    Sentence.of("")
                        .cell(all, Cells.count(row, "sites", "sites"), "sites")
                        .say(" with damage and cost on record")
                        .build()));
  }
}
