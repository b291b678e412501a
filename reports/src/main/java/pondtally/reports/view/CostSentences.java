package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** What was spent and what a protected property cost, in sentences. */
final class CostSentences {

  private CostSentences() {}

  static List<Sentence> of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>();
    spent(tables, sentences);
    index(tables, sentences);
    volunteers(tables, sentences);
    perUnit(
        tables,
        "per-property",
        "cash",
        "view.CostSentences.a-protected-property-cost-in-cash",
        "properties",
        sentences);
    perUnit(
        tables,
        "per-property",
        "cash-and-in-kind",
        "view.CostSentences.the-same-with-in-kind-value",
        "properties",
        sentences);
    perUnit(
        tables,
        "per-acre-year",
        "cash",
        "view.CostSentences.a-wetland-acre-kept-for-a",
        "acre-years",
        sentences);
    return sentences;
  }

  private static Rows whole(TablePackage tables, String table) {
    return Rows.of(tables, table)
        .where("grouping", "all")
        .where("group", "all")
        .where("year", "all");
  }

  private static void spent(TablePackage tables, List<Sentence> sentences) {
    Rows all = whole(tables, "costs");
    if (all.first().isEmpty()) {
      return;
    }
    Row row = all.first().get();
    if (Cells.number(row, "build_usd").isEmpty()
        && Cells.number(row, "devices_costed").orElse(1) == 0) {
      sentences.add(
          Said.of("view.CostSentences.what-the-program-cost-is-not")
              .cell("devicesCosted", all, Cells.count(row, "devices_costed"), "devices_costed")
              .cell("devices", all, Cells.count(row, "devices", "devices"), "devices")
              .build());
      return;
    }
    sentences.add(
        Said.of("view.CostSentences.recorded-so-far-in-cash-for")
            .cell("buildUsd", all, dollars(row, "build_usd"), "build_usd")
            .cell("upkeepUsd", all, dollars(row, "upkeep_usd"), "upkeep_usd")
            .cell("inKindUsd", all, dollars(row, "in_kind_usd"), "in_kind_usd")
            .cell("devicesCosted", all, Cells.count(row, "devices_costed"), "devices_costed")
            .cell("devices", all, Cells.count(row, "devices", "devices"), "devices")
            .number("n", (long) Cells.number(row, "devices").orElse(0))
            .number("without", without(row))
            .build());
  }

  /** Of a program whose every device has costs there are no others to speak of. */
  private static long without(Row row) {
    double costed = Cells.number(row, "devices_costed").orElse(0);
    return (long) Math.max(0, Cells.number(row, "devices").orElse(0) - costed);
  }

  private static String dollars(Row row, String column) {
    return Missing.orNotKnown(Cells.number(row, column), NumberText::dollars);
  }

  /** Dollars that the price index cannot place, or not yet for good. */
  private static void index(TablePackage tables, List<Sentence> sentences) {
    Rows all = whole(tables, "costs");
    all.first()
        .ifPresent(
            row -> {
              double before = Cells.number(row, "lines_before_index").orElse(0);
              if (before > 0) {
                sentences.add(
                    Said.of("view.CostSentences.before-the-first-year-of-the")
                        .cell(
                            "linesBeforeIndex",
                            all,
                            NumberText.count((long) before, "cost lines"),
                            "lines_before_index")
                        .cell(
                            "beforeIndexNominalUsd",
                            all,
                            dollars(row, "before_index_nominal_usd"),
                            "before_index_nominal_usd")
                        .number("n", (long) before)
                        .build());
              }
              if (Cells.number(row, "lines_index_provisional").orElse(0) > 0) {
                sentences.add(
                    Said.of("view.CostSentences.of-the-dollars-recorded-is-index")
                        .cell(
                            "indexProvisionalUsd",
                            all,
                            dollars(row, "index_provisional_usd"),
                            "index_provisional_usd")
                        .build());
              }
            });
  }

  private static void volunteers(TablePackage tables, List<Sentence> sentences) {
    Rows all = whole(tables, "costs");
    double hours =
        all.first().map(row -> Cells.number(row, "volunteer_hours").orElse(0)).orElse(0.0);
    if (hours > 0 && tables.fact("volunteer_rate_usd").isEmpty()) {
      sentences.add(
          Said.of("view.CostSentences.are-not-valued-because-no-volunteer")
              .cell(
                  "volunteerHours",
                  all,
                  NumberText.measured(hours, 0, "volunteer hours"),
                  "volunteer_hours")
              .build());
    }
  }

  private static void perUnit(
      TablePackage tables,
      String measure,
      String basis,
      String opening,
      String units,
      List<Sentence> sentences) {
    Rows all = whole(tables, "cost_effectiveness").where("measure", measure).where("basis", basis);
    if (all.first().isEmpty()) {
      return;
    }
    Row row = all.first().get();
    Optional<Estimate> cost =
        Estimate.of(
            Cells.number(row, "value_usd"), Cells.number(row, "lower"), Cells.number(row, "upper"));
    if (cost.isEmpty()) {
      boolean nothing = Cells.number(row, "denominator").orElse(-1) == 0;
      String why =
          nothing
              ? Messages.of(
                  "view.CostSentences.cannot-be-computed-because-the-records",
                  Map.of("units", Messages.or("unit." + units + ".other", units)))
              : Messages.of("view.CostSentences.not-known");
      sentences.add(Said.of(opening).words("cost", why).build());
      return;
    }
    Said based =
        Said.of("view.CostSentences.based-on")
            .cell("cost", all, cost.get().dollars(), "value_usd", "lower", "upper")
            .cell(
                "units",
                all,
                NumberText.measured(Cells.number(row, "denominator").orElse(0), 0, units),
                "denominator")
            .part("left", left(all, (long) Cells.number(row, "clusters_left_out").orElse(0)));
    sentences.add(Said.of(opening).part("cost", based).build());
  }

  private static Optional<Said> left(Rows all, long left) {
    return left == 0
        ? Optional.empty()
        : Optional.of(
            Said.of("view.CostSentences.left-out-because-a-cost-or")
                .cell("clusters", all, NumberText.count(left, "site clusters"), "clusters_left_out")
                .number("n", left));
  }
}
