package pondtally.reports.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Messages;
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

  /** Rounded where the limits of the ratio, taken as benefit at this cost, round it. */
  private static String net(Row row) {
    OptionalDouble cost = Cells.number(row, "cost_usd");
    return Estimate.of(
            Cells.number(row, "net_usd"),
            netAt(Cells.number(row, "ratio_lower"), cost),
            netAt(Cells.number(row, "ratio_upper"), cost))
        .map(found -> found.hasLimits() ? found.dollarsAlone() : dollars(row, "net_usd"))
        .orElseGet(() -> dollars(row, "net_usd"));
  }

  private static OptionalDouble netAt(OptionalDouble ratio, OptionalDouble cost) {
    return ratio.isPresent() && cost.isPresent()
        ? OptionalDouble.of(cost.getAsDouble() * (ratio.getAsDouble() - 1))
        : OptionalDouble.empty();
  }

  private static void toDate(Rows at, Row row, List<Sentence> sentences) {
    if (!known(row, "cost_usd")) {
      sentences.add(
          missing(row, Messages.of("view.BenefitSentences.benefit-against-cost-to-date-cannot")));
      return;
    }
    sentences.add(
        Said.of("view.BenefitSentences.net-benefit-to-date-damage-avoided")
            .cell("netUsd", at, net(row), "net_usd")
            .cell(
                "equivalentAnnualUsd",
                at,
                dollars(row, "equivalent_annual_usd"),
                "equivalent_annual_usd")
            .build());
    sentences.add(ratio(at, "view.BenefitSentences.damage-avoided-to-date-for-each"));
    leftOut(at, row, sentences);
  }

  private static Sentence missing(Row row, String why) {
    boolean withheld = row.text("cost_usd").equals(Line.WITHHELD);
    return Sentence.of(
            withheld ? Messages.of("view.BenefitSentences.benefit-against-cost-is-withheld") : why)
        .build();
  }

  private static void leftOut(Rows at, Row row, List<Sentence> sentences) {
    OptionalDouble left = Cells.number(row, "sites_left_out");
    if (left.isPresent() && left.getAsDouble() > 0) {
      sentences.add(
          Said.of("view.BenefitSentences.left-out-of-benefit-and-cost")
              .cell(
                  "sites",
                  at,
                  NumberText.count((long) left.getAsDouble(), "sites"),
                  "sites_left_out")
              .number("n", (long) left.getAsDouble())
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
        Said.of("view.BenefitSentences.a-new-device-looking-ahead-at")
            .cell(
                "horizonYears",
                at,
                Missing.orNotKnown(Cells.number(row, "horizon_years"), NumberText::years),
                "horizon_years")
            .cell(
                "discountRate",
                at,
                Missing.orNotKnown(Cells.number(row, "discount_rate"), NumberText::percent),
                "discount_rate")
            .cell("netUsd", at, net(row), "net_usd")
            .cell(
                "equivalentAnnualUsd",
                at,
                dollars(row, "equivalent_annual_usd"),
                "equivalent_annual_usd")
            .build());
    sentences.add(ratio(at, "view.BenefitSentences.damage-that-it-is-expected-to"));
  }

  private static String unprojected(Row row) {
    String missing =
        row.text("fit").isEmpty()
            ? Messages.of("view.BenefitSentences.no-life-could-be-fitted-to")
            : Messages.of("view.BenefitSentences.the-yearly-damage-the-cost-of");
    return Messages.of(
        "view.BenefitSentences.benefit-against-cost-of-a-new", Map.of("missing", missing));
  }

  private static Sentence ratio(Rows at, String key) {
    Optional<Row> row = at.first();
    Optional<Estimate> ratio =
        row.flatMap(
            r ->
                Estimate.of(
                    Cells.number(r, "ratio"),
                    Cells.number(r, "ratio_lower"),
                    Cells.number(r, "ratio_upper")));
    if (ratio.isEmpty()) {
      return Said.of(key)
          .words("ratio", Messages.of("view.BenefitSentences.cannot-be-computed-because-the-cost"))
          .build();
    }
    OptionalDouble sites = Cells.number(row.get(), "sites");
    Said told =
        Said.of("view.BenefitSentences.ratio-and-verdict")
            .cell("ratio", at, ratio.get().ratio(), "ratio", "ratio_lower", "ratio_upper")
            .words("verdict", verdict(ratio.get()))
            .part("based", sites.isEmpty() ? Optional.empty() : Optional.of(based(at, sites)));
    return Said.of(key).part("ratio", told).build();
  }

  private static Said based(Rows at, OptionalDouble sites) {
    return Said.of("view.BenefitSentences.based-on")
        .cell("sites", at, NumberText.count((long) sites.getAsDouble(), "sites"), "sites");
  }

  private static String verdict(Estimate ratio) {
    if (!ratio.hasLimits()) {
      return Messages.of("view.BenefitSentences.without-limits-this-says-little");
    }
    if (ratio.lower().getAsDouble() > 1) {
      return Messages.of("view.BenefitSentences.benefit-exceeds-cost-over-the-whole");
    }
    return ratio.upper().getAsDouble() < 1
        ? Messages.of("view.BenefitSentences.cost-exceeds-benefit-over-the-whole")
        : Messages.of("view.BenefitSentences.the-limits-lie-on-both-sides");
  }
}
