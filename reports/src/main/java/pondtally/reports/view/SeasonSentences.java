package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** What the next season is expected to take, in a sentence. */
final class SeasonSentences {

  private SeasonSentences() {}

  static List<Sentence> of(TablePackage tables) {
    Rows all = Rows.of(tables, "season_forecast").where("grouping", "all").where("group", "all");
    Optional<Row> next =
        all.list().stream()
            .filter(row -> Cells.number(row, "expected_failures").isPresent())
            .min(java.util.Comparator.comparing(row -> row.text("year")));
    List<Sentence> sentences = new ArrayList<>();
    next.ifPresent(row -> sentences.add(sentence(all.where("year", row.text("year")), row)));
    PlanSentences.addTo(sentences, tables);
    return sentences;
  }

  private static Sentence sentence(Rows at, Row row) {
    Sentence.Builder text =
        Sentence.of(
                Messages.of(
                    "view.SeasonSentences.expected", Map.of("when", SeasonYear.when(Line.of(row)))))
            .cell(
                at,
                NumberText.measured(
                    Cells.number(row, "expected_failures").orElseThrow(), 0, "failures"),
                "expected_failures");
    if (Cells.number(row, "lower").isPresent() && Cells.number(row, "upper").isPresent()) {
      text.say(Messages.of("view.SeasonSentences.19-times-in-20-between"))
          .cell(
              at,
              Messages.of(
                  "view.SeasonSentences.and",
                  Map.of("whole", whole(row, "lower"), "whole2", whole(row, "upper"))),
              "lower",
              "upper")
          .say(")");
    }
    if (Cells.number(row, "visits").isPresent()) {
      text.say(Messages.of("common.and"))
          .cell(
              at,
              NumberText.measured(Cells.number(row, "visits").getAsDouble(), 0, "visits"),
              "visits");
    }
    if (Cells.number(row, "cost_usd").isPresent()) {
      text.say(Messages.of("view.SeasonSentences.for-about"))
          .cell(at, NumberText.dollars(Cells.number(row, "cost_usd").getAsDouble()), "cost_usd");
    }
    return text.say(Messages.of("view.SeasonSentences.if-devices-go-on-failing-as")).build();
  }

  private static String whole(Row row, String column) {
    return NumberText.decimal(Cells.number(row, column).orElseThrow(), 0);
  }
}
