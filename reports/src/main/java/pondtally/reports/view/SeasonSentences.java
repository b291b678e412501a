package pondtally.reports.view;

import java.util.List;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.NumberText;

/** What the next season is expected to take, in a sentence. */
final class SeasonSentences {

  private SeasonSentences() {}

  static List<Sentence> of(TablePackage tables) {
    Rows all = Rows.of(tables, "season_forecast").where("grouping", "all").where("group", "all");
    Optional<Row> next =
        all.list().stream()
            .filter(row -> row.number("expected_failures").isPresent())
            .min(java.util.Comparator.comparing(row -> row.text("year")));
    return next.map(row -> List.of(sentence(all.where("year", row.text("year")), row)))
        .orElse(List.of());
  }

  private static Sentence sentence(Rows at, Row row) {
    Sentence.Builder text =
        Sentence.of("Expected in " + row.text("year") + ": ")
            .cell(
                at,
                NumberText.measured(row.number("expected_failures").orElseThrow(), 0, "failures"),
                "expected_failures");
    if (row.number("lower").isPresent() && row.number("upper").isPresent()) {
      text.say(" (9 times in 10 between ")
          .cell(at, whole(row, "lower") + " and " + whole(row, "upper"), "lower", "upper")
          .say(")");
    }
    if (row.number("visits").isPresent()) {
      text.say(" and ")
          .cell(at, NumberText.measured(row.number("visits").getAsDouble(), 0, "visits"), "visits");
    }
    if (row.number("cost_usd").isPresent()) {
      text.say(", for about ")
          .cell(at, NumberText.dollars(row.number("cost_usd").getAsDouble()), "cost_usd");
    }
    return text.say(", if devices go on failing as they have.").build();
  }

  private static String whole(Row row, String column) {
    return NumberText.decimal(row.number(column).orElseThrow(), 0);
  }
}
