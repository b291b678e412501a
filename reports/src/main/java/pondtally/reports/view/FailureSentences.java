package pondtally.reports.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** Failure rates, causes and watersheds, in sentences. */
final class FailureSentences {

  private static final int MOST_CAUSES = 3;

  private FailureSentences() {}

  static List<Sentence> of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>();
    rate(tables, sentences);
    causes(tables, sentences);
    watersheds(tables, sentences);
    return sentences;
  }

  static void rate(TablePackage tables, List<Sentence> sentences) {
    Rows all =
        Rows.of(tables, "failure_rates")
            .where("grouping", "all")
            .where("group", "all")
            .where("year", "all");
    Optional<Row> row = all.first();
    Optional<Estimate> rate =
        row.flatMap(
            r ->
                Estimate.of(
                    Cells.number(r, "per_100_device_years"),
                    Cells.number(r, "lower"),
                    Cells.number(r, "upper")));
    if (rate.isEmpty()) {
      return;
    }
    sentences.add(
        Said.of("view.FailureSentences.failures-in-100-device-years-based")
            .cell(
                "per_100DeviceYears",
                all,
                rate.get().rate(),
                "per_100_device_years",
                "lower",
                "upper")
            .cell("failures", all, Cells.count(row.get(), "failures", "failures"), "failures")
            .cell(
                "deviceYears",
                all,
                NumberText.measured(
                    Cells.number(row.get(), "device_years").orElse(0), 0, "device-years"),
                "device_years")
            .build());
  }

  static void causes(TablePackage tables, List<Sentence> sentences) {
    Rows all = Rows.of(tables, "failure_causes").where("grouping", "all").where("group", "all");
    double failures =
        all.list().stream().mapToDouble(r -> Cells.number(r, "failures").orElse(0)).sum();
    if (failures == 0) {
      return;
    }
    Sentence.Builder text =
        Sentence.of(Messages.of("view.FailureSentences.most-often-put-down-to"));
    List<Row> top =
        all.list().stream()
            .sorted(Comparator.comparingDouble(r -> -Cells.number(r, "failures").orElse(0)))
            .limit(MOST_CAUSES)
            .toList();
    for (int i = 0; i < top.size(); i++) {
      String cause = top.get(i).text("cause");
      text.say(i == 0 ? "" : ", ")
          .say(
              cause.equals("unknown")
                  ? Messages.of("view.FailureSentences.cause-not-recorded")
                  : GroupText.words(cause))
          .say(" (")
          .cell(all.where("cause", cause), Cells.count(top.get(i), "failures"), "failures")
          .say(Messages.of("common.of"))
          .sum(all, NumberText.count((long) failures), "failures")
          .say(")");
    }
    sentences.add(text.say(".").build());
  }

  static void watersheds(TablePackage tables, List<Sentence> sentences) {
    Rows all = Rows.of(tables, "failure_rates").where("grouping", "watershed").where("year", "all");
    Rows large = all.atLeast("devices", Groups.smallBelow(tables));
    List<Row> judged =
        large.list().stream().filter(row -> !row.text("outside_funnel").isEmpty()).toList();
    if (judged.isEmpty()) {
      return;
    }
    List<Row> beyond = judged.stream().filter(row -> row.isTrue("outside_funnel")).toList();
    if (beyond.isEmpty()) {
      sentences.add(
          judged.size() == 1
              ? Said.of("view.FailureSentences.the-one-watershed-large-enough-to").build()
              : Said.of("view.FailureSentences.no-watershed-stands-out-the-large")
                  .rows(
                      "size",
                      large.where("outside_funnel", "false"),
                      NumberText.count(judged.size()))
                  .build());
    }
    for (Row row : beyond) {
      sentences.add(standsOut(all.where("group", row.text("group")), row));
    }
  }

  private static Sentence standsOut(Rows at, Row row) {
    double rate = Cells.number(row, "per_100_device_years").orElse(0);
    boolean worse = rate > Cells.number(row, "funnel_upper").orElse(Double.POSITIVE_INFINITY);
    return Said.of("view.FailureSentences.watershed-fails-often-than-chance-alone")
        .words("group", row.text("group"))
        .words(
            "part",
            worse
                ? Messages.of("view.FailureSentences.more")
                : Messages.of("view.FailureSentences.less"))
        .cell("per_100DeviceYears", at, NumberText.rate(rate), "per_100_device_years")
        .cell(
            "funnelLower",
            at,
            Messages.of(
                "view.FailureSentences.to",
                Map.of(
                    "rate",
                    NumberText.rate(Cells.number(row, "funnel_lower").orElse(0)),
                    "rate2",
                    NumberText.rate(Cells.number(row, "funnel_upper").orElse(0)))),
            "funnel_lower",
            "funnel_upper")
        .cell("devices", at, Cells.count(row, "devices", "devices"), "devices")
        .build();
  }
}
