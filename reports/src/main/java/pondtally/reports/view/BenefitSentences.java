package pondtally.reports.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** Benefit against the alternative, in sentences that say no more than the limits allow. */
final class BenefitSentences {

  private BenefitSentences() {}

  static List<Sentence> of(TablePackage tables) {
    Rows all = Rows.of(tables, "benefit_cost").where("grouping", "all").where("group", "all");
    List<Sentence> sentences = new ArrayList<>();
    ratio(
        all.where("basis", "to-date"),
        Sentence.of("Damage avoided to date for each dollar spent, in dollars: "),
        sentences);
    Rows projected = all.where("basis", "projected");
    wanted(projected, tables.fact("discount_rate"))
        .ifPresent(row -> projected(projected, row.text("discount_rate"), sentences));
    return sentences;
  }

  /** The row at the run's own discount rate; where that is not known, the most cautious one. */
  private static Optional<Row> wanted(Rows projected, String rate) {
    Comparator<Row> byRate =
        Comparator.comparingDouble(row -> Cells.number(row, "discount_rate").orElse(-1));
    return projected.list().stream()
        .filter(row -> rate.isEmpty() || isRate(row, Double.parseDouble(rate)))
        .max(byRate);
  }

  private static boolean isRate(Row row, double rate) {
    OptionalDouble own = Cells.number(row, "discount_rate");
    return own.isPresent() && own.getAsDouble() == rate;
  }

  private static void projected(Rows projected, String rate, List<Sentence> sentences) {
    Rows at = projected.where("discount_rate", rate);
    Row row = at.first().orElseThrow();
    Sentence.Builder opening =
        Sentence.of("Damage that a new device is expected to avoid for each dollar, looking ")
            .cell(
                at,
                Missing.orNotKnown(Cells.number(row, "horizon_years"), NumberText::years),
                "horizon_years")
            .say(" ahead at ")
            .cell(
                at,
                Missing.orNotKnown(Cells.number(row, "discount_rate"), NumberText::percent),
                "discount_rate")
            .say(" discount, in dollars: ");
    ratio(at, opening, sentences);
  }

  private static void ratio(Rows at, Sentence.Builder opening, List<Sentence> sentences) {
    Optional<Row> row = at.first();
    Optional<Estimate> ratio =
        row.flatMap(
            r ->
                Estimate.of(
                    Cells.number(r, "ratio"),
                    Cells.number(r, "ratio_lower"),
                    Cells.number(r, "ratio_upper")));
    if (ratio.isEmpty()) {
      return;
    }
    Sentence.Builder text =
        opening
            .cell(at, ratio.get().ratio(), "ratio", "ratio_lower", "ratio_upper")
            .say(". ")
            .say(verdict(ratio.get()));
    Cells.number(row.get(), "sites")
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
