package pondtally.reports.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** What it cost, cash alone and with in-kind value, and what it saved. */
final class GrantCost {

  private static final Map<String, List<String>> UNITS = units();

  private GrantCost() {}

  private static Map<String, List<String>> units() {
    Map<String, List<String>> units = new LinkedHashMap<>();
    units.put(
        "per-property", List.of(Messages.of("view.GrantCost.a-protected-property"), "properties"));
    units.put(
        "per-property-year",
        List.of(Messages.of("view.GrantCost.a-property-protected-for-a-year"), "property-years"));
    units.put(
        "per-acre-year",
        List.of(Messages.of("view.GrantCost.a-wetland-acre-kept-for-a"), "acre-years"));
    units.put(
        "per-removal-avoided",
        List.of(
            Messages.of("view.GrantCost.a-removal-avoided-computed"),
            Messages.of("common.removals-avoided")));
    units.put(
        "per-functional-device-year",
        List.of(Messages.of("view.GrantCost.a-device-verified-working-for-a"), "device-years"));
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
              Messages.of("common.Cost"),
              sentences,
              shown,
              Map.of(
                  "cost-per-property",
                  Messages.of("view.GrantCost.cost-of-a-protected-property-by"))));
    }
    List<Sentence> benefit = BenefitSentences.of(tables);
    if (!benefit.isEmpty()) {
      sections.add(
          new GrantSection(
              2,
              Messages.of("common.Benefit-against-cost"),
              benefit,
              List.of(),
              Map.of(
                  "benefit-cost-sensitivity",
                  Messages.of("view.GrantCost.how-the-benefit-for-each-dollar"))));
    }
    return sections;
  }

  private static void unitCosts(TablePackage tables, List<GrantTable> shown) {
    Rows all = GrantOutcomes.whole(tables, "cost_effectiveness").where("year", "all");
    GrantTable.Builder table =
        GrantTable.of(
                Messages.of(
                    "view.GrantCost.what-one-unit-of-outcome-cost",
                    Map.of("inDollars", inDollars(tables))))
            .words(Messages.of("common.Unit"))
            .words(Messages.of("view.GrantCost.cash-alone"))
            .words(Messages.of("view.GrantCost.cash-and-in-kind-value"))
            .words(Messages.of("common.Based-on"));
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
        Messages.of("view.GrantCost.one-row-for-each-unit-of"),
        Messages.of("view.GrantCost.likely-95-limits-by-resampling-clusters"));
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
    GrantCells.above(row, "clusters_left_out", 0)
        .ifPresent(
            left ->
                text.say("; ")
                    .cell(row, NumberText.count((long) left, "site clusters"), "clusters_left_out")
                    .say(Messages.of("common.left-out")));
    return text.build();
  }

  private static void years(TablePackage tables, List<GrantTable> shown) {
    Rows all = GrantOutcomes.whole(tables, "costs");
    GrantTable.Builder table =
        GrantTable.of(
                Messages.of(
                    "view.GrantCost.recorded-spending-by-year",
                    Map.of("inDollars", inDollars(tables))))
            .words(Messages.of("common.Year"))
            .numbers(
                Messages.of("view.GrantCost.building-cash"),
                Messages.of("view.GrantCost.upkeep-cash"),
                Messages.of("common.In-kind"),
                Messages.of("view.GrantCost.total"));
    all.list().stream()
        .map(row -> row.text("year"))
        .filter(year -> !year.equals("all"))
        .sorted()
        .forEach(year -> costRow(table, all.where("year", year), year));
    if (all.where("year", "all").first().isPresent()) {
      costRow(table, all.where("year", "all"), Messages.of("view.GrantCost.all-years"));
    }
    table.addTo(
        shown,
        Messages.of("view.GrantCost.one-row-for-each-year-and"),
        Messages.of("view.GrantCost.recorded-cost-only-cost-that-nobody"));
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
    return year.isEmpty() ? "" : Messages.of("view.GrantCost.in-dollars-of", Map.of("year", year));
  }
}
