package pondtally.reports.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.NumberText;

/** What it cost, cash alone and with in-kind value, and what it saved. */
final class GrantCost {

  private static final Map<String, List<String>> UNITS = units();

  private GrantCost() {}

  private static Map<String, List<String>> units() {
    Map<String, List<String>> units = new LinkedHashMap<>();
    units.put("per-property", List.of("A protected property", "properties"));
    units.put("per-property-year", List.of("A property protected for a year", "property-years"));
    units.put("per-acre-year", List.of("A wetland acre kept for a year", "acre-years"));
    units.put("per-removal-avoided", List.of("A removal avoided, computed", "removals avoided"));
    units.put(
        "per-functional-device-year",
        List.of("A device verified working for a year", "device-years"));
    return units;
  }

  static List<GrantSection> of(TablePackage tables) {
    List<GrantSection> sections = new ArrayList<>();
    List<GrantTable> shown = new ArrayList<>();
    unitCosts(tables, shown);
    years(tables, shown);
    List<Sentence> sentences = CostSentences.of(tables);
    if (!sentences.isEmpty() || !shown.isEmpty()) {
      sections.add(
          new GrantSection(
              1,
              "Cost",
              sentences,
              shown,
              Map.of("cost-per-property", "Cost of a protected property by watershed.")));
    }
    List<Sentence> benefit = BenefitSentences.of(tables);
    if (!benefit.isEmpty()) {
      sections.add(
          new GrantSection(
              2,
              "Benefit against cost",
              benefit,
              List.of(),
              Map.of(
                  "benefit-cost-sensitivity",
                  "How the benefit for each dollar moves with each assumption.")));
    }
    return sections;
  }

  private static void unitCosts(TablePackage tables, List<GrantTable> shown) {
    Rows all = GrantOutcomes.whole(tables, "cost_effectiveness").where("year", "all");
    GrantTable.Builder table =
        GrantTable.of("What one unit of outcome cost" + inDollars(tables))
            .words("Unit")
            .words("Cash alone")
            .words("Cash and in-kind value")
            .words("Based on");
    UNITS.forEach(
        (measure, words) -> {
          Rows cash = all.where("measure", measure).where("basis", "cash");
          Rows both = all.where("measure", measure).where("basis", "cash-and-in-kind");
          if (cash.first().isPresent() || both.first().isPresent()) {
            table.row(
                GrantCells.words(words.get(0)),
                GrantCells.estimate(cash, Estimate::dollars, "value_usd", "lower", "upper"),
                GrantCells.estimate(both, Estimate::dollars, "value_usd", "lower", "upper"),
                basedOn(cash.first().isPresent() ? cash : both, words.get(1)));
          }
        });
    table.addTo(
        shown,
        "One row for each unit of outcome: its cost in cash, with in-kind value, and what it is based on.",
        "Likely: 95% limits by resampling clusters of sites that share a pond or a property. Clusters whose cost or outcome is not recorded are left out of cost and outcome alike. Do not add these rows: the same dollars stand in each of them.");
  }

  /** Units of outcome, and the clusters that could not be counted. */
  static Sentence basedOn(Rows row, String units) {
    Sentence.Builder text = Sentence.of("");
    if (GrantCells.number(row, "denominator").isEmpty()) {
      return text.say(GrantCells.missing(row, "denominator")).build();
    }
    text.cell(
        row,
        NumberText.measured(GrantCells.number(row, "denominator").getAsDouble(), 0, units),
        "denominator");
    GrantCells.number(row, "clusters_left_out")
        .ifPresent(
            left ->
                text.say("; ")
                    .cell(row, NumberText.count((long) left, "site clusters"), "clusters_left_out")
                    .say(" left out"));
    return text.build();
  }

  private static void years(TablePackage tables, List<GrantTable> shown) {
    Rows all = GrantOutcomes.whole(tables, "costs");
    GrantTable.Builder table =
        GrantTable.of("Recorded spending by year" + inDollars(tables))
            .words("Year")
            .numbers("Building, cash", "Upkeep, cash", "In kind", "Total");
    all.list().stream()
        .map(row -> row.text("year"))
        .filter(year -> !year.equals("all"))
        .sorted()
        .forEach(year -> costRow(table, all.where("year", year), year));
    if (all.where("year", "all").first().isPresent()) {
      costRow(table, all.where("year", "all"), "All years");
    }
    table.addTo(
        shown,
        "One row for each year and one for all: cash for building and upkeep, in-kind value, total.",
        "Recorded cost only; cost that nobody recorded is not known and not in these figures.");
  }

  private static void costRow(GrantTable.Builder table, Rows row, String name) {
    table.row(
        GrantCells.words(name),
        GrantCells.cell(row, "build_usd", NumberText::dollars),
        GrantCells.cell(row, "upkeep_usd", NumberText::dollars),
        GrantCells.cell(row, "in_kind_usd", NumberText::dollars),
        GrantCells.cell(row, "total_usd", NumberText::dollars));
  }

  private static String inDollars(TablePackage tables) {
    String year = tables.fact("base_year");
    return year.isEmpty() ? "" : ", in dollars of " + year;
  }
}
