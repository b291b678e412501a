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

/**
 * Benefit against the alternative, in sentences that say no more than the limits allow: net benefit
 * and annual cost first, then the ratio, then how it is meant; or what is missing.
 */
final class BenefitSentences {

  private BenefitSentences() {}

  static List<Sentence> of(TablePackage tables) {
    Rows all = Rows.of(tables, "benefit_cost").where("grouping", "all").where("group", "all");
    List<Sentence> sentences = new ArrayList<>();
    Rows toDate = all.where("basis", "to-date");
    toDate.first().ifPresent(row -> toDate(toDate, row, sentences));
    Rows projected = all.where("basis", "projected");
    wanted(projected, tables.fact("discount_rate"))
        .ifPresent(row -> projected(projected, row.text("discount_rate"), sentences));
    if (!sentences.isEmpty()) {
      sentences.add(Sentence.of(Convention.RATIO + " " + Convention.BASELINE).build());
    }
    WetlandValue.sentence(tables).ifPresent(sentences::add);
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

  private static boolean known(Row row, String column) {
    return Cells.number(row, column).isPresent();
  }

  private static String dollars(Row row, String column) {
    return row.text(column).equals(Line.WITHHELD)
        ? Missing.WITHHELD
        : Missing.orNotKnown(Cells.number(row, column), NumberText::dollars);
  }

  private static void toDate(Rows at, Row row, List<Sentence> sentences) {
    if (!known(row, "cost_usd")) {
      sentences.add(
          missing(
              row,
              "Benefit against cost to date cannot be computed: no site has both its yearly damage and the cost of all its devices on record."));
      return;
    }
    sentences.add(
        Sentence.of("Net benefit to date, damage avoided less everything spent: ")
            .cell(at, dollars(row, "net_usd"), "net_usd")
            .say("; cost came to ")
            .cell(at, dollars(row, "equivalent_annual_usd"), "equivalent_annual_usd")
            .say(" a year.")
            .build());
    ratio(at, Sentence.of("Damage avoided to date for each dollar spent, in dollars: "), sentences);
    leftOut(at, row, sentences);
  }

  private static Sentence missing(Row row, String why) {
    boolean withheld = row.text("cost_usd").equals(Line.WITHHELD);
    return Sentence.of(withheld ? "Benefit against cost is withheld." : why).build();
  }

  private static void leftOut(Rows at, Row row, List<Sentence> sentences) {
    OptionalDouble left = Cells.number(row, "sites_left_out");
    if (left.isPresent() && left.getAsDouble() > 0) {
      sentences.add(
          Sentence.of("")
              .cell(at, NumberText.count((long) left.getAsDouble(), "sites"), "sites_left_out")
              .say(
                  left.getAsDouble() == 1
                      ? " is left out of benefit and cost alike: its yearly damage or the cost of a device is not on record."
                      : " are left out of benefit and cost alike: their yearly damage or the cost of a device is not on record.")
              .build());
    }
  }

  private static void projected(Rows projected, String rate, List<Sentence> sentences) {
    Rows at = projected.where("discount_rate", rate);
    Row row = at.first().orElseThrow();
    if (!known(row, "cost_usd")) {
      sentences.add(missing(row, unprojected(row)));
      return;
    }
    sentences.add(
        Sentence.of("A new device, looking ")
            .cell(
                at,
                Missing.orNotKnown(Cells.number(row, "horizon_years"), NumberText::years),
                "horizon_years")
            .say(" ahead at ")
            .cell(
                at,
                Missing.orNotKnown(Cells.number(row, "discount_rate"), NumberText::percent),
                "discount_rate")
            .say(" discount: net benefit ")
            .cell(at, dollars(row, "net_usd"), "net_usd")
            .say(" at present value; cost ")
            .cell(at, dollars(row, "equivalent_annual_usd"), "equivalent_annual_usd")
            .say(" a year.")
            .build());
    ratio(
        at,
        Sentence.of("Damage that it is expected to avoid for each dollar of cost, in dollars: "),
        sentences);
  }

  private static String unprojected(Row row) {
    String missing =
        row.text("fit").isEmpty()
            ? "no life could be fitted to the records, which takes at least 3 failures at different ages."
            : "the yearly damage, the cost of building or the cost of a visit is on no record.";
    return "Benefit against cost of a new device cannot be projected: " + missing;
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
      sentences.add(
          opening.say("cannot be computed, because the cost on record is nothing.").build());
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
