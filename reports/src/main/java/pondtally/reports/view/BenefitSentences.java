package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.NumberText;

/** Benefit against the alternative, in sentences that say no more than the limits allow. */
final class BenefitSentences {

  private BenefitSentences() {}

  static List<Sentence> of(TablePackage tables) {
    Rows all = Rows.of(tables, "benefit_cost").where("grouping", "all").where("group", "all");
    List<Sentence> sentences = new ArrayList<>();
    ratio(
        all.where("basis", "to-date"),
        "To date, each dollar spent stands against damage avoided, in dollars: ",
        sentences);
    Rows projected = all.where("basis", "projected");
    projected.list().stream()
        .filter(row -> sameRate(row, tables.fact("discount_rate")))
        .findFirst()
        .ifPresent(
            row ->
                ratio(
                    projected.where("discount_rate", row.text("discount_rate")),
                    "A new device, looked ahead at "
                        + NumberText.percent(row.number("discount_rate").orElse(0))
                        + " discount, is expected to avoid for each dollar: ",
                    sentences));
    return sentences;
  }

  private static boolean sameRate(Row row, String wanted) {
    return wanted.isEmpty()
        || row.number("discount_rate").isPresent()
            && row.number("discount_rate").getAsDouble() == Double.parseDouble(wanted);
  }

  private static void ratio(Rows at, String opening, List<Sentence> sentences) {
    Optional<Row> row = at.first();
    Optional<Estimate> ratio =
        row.flatMap(
            r -> Estimate.of(r.number("ratio"), r.number("ratio_lower"), r.number("ratio_upper")));
    if (ratio.isEmpty()) {
      return;
    }
    Sentence.Builder text =
        Sentence.of(opening)
            .cell(at, ratio.get().ratio(), "ratio", "ratio_lower", "ratio_upper")
            .say(". ")
            .say(verdict(ratio.get()));
    row.get()
        .number("sites")
        .ifPresent(
            sites ->
                text.say(" Based on ")
                    .cell(at, NumberText.count((long) sites, "sites"), "sites")
                    .say(" with damage and cost on record."));
    sentences.add(text.build());
  }

  private static String verdict(Estimate ratio) {
    if (!ratio.hasLimits()) {
      return "Without limits this says little.";
    }
    if (ratio.lower().getAsDouble() > 1) {
      return "Benefit exceeds cost over the whole range of the limits, if the assumptions hold.";
    }
    return ratio.upper().getAsDouble() < 1
        ? "Cost exceeds benefit over the whole range of the limits, if the assumptions hold."
        : "The limits lie on both sides of 1: the records do not show whether benefit exceeds cost.";
  }
}
