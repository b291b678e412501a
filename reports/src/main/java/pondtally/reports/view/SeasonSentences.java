package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
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
    return Said.of("view.SeasonSentences.expected")
        .words("when", SeasonYear.when(Line.of(row)))
        .cell(
            "failures",
            at,
            NumberText.measured(
                Cells.number(row, "expected_failures").orElseThrow(), 0, "failures"),
            "expected_failures")
        .part("limits", limits(at, row))
        .part(
            "visits",
            known(row, "visits")
                .map(
                    visits ->
                        Said.of("view.SeasonSentences.and-visits")
                            .cell(
                                "visits", at, NumberText.measured(visits, 0, "visits"), "visits")))
        .part(
            "cost",
            cost(row)
                .map(
                    usd ->
                        Said.of("view.SeasonSentences.for-about")
                            .cell("cost", at, usd.dollarsAlone(), "cost_usd")))
        .build();
  }

  private static Optional<Estimate> cost(Row row) {
    return Estimate.of(
        Cells.number(row, "cost_usd"),
        Cells.number(row, "cost_lower"),
        Cells.number(row, "cost_upper"));
  }

  private static Optional<Said> limits(Rows at, Row row) {
    if (known(row, "lower").isEmpty() || known(row, "upper").isEmpty()) {
      return Optional.empty();
    }
    String range =
        Messages.of(
            "view.SeasonSentences.and",
            Map.of("whole", whole(row, "lower"), "whole2", whole(row, "upper")));
    return Optional.of(
        Said.of("view.SeasonSentences.19-times-in-20-between")
            .cell("range", at, range, "lower", "upper"));
  }

  private static Optional<Double> known(Row row, String column) {
    OptionalDouble number = Cells.number(row, column);
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }

  private static String whole(Row row, String column) {
    return NumberText.decimal(Cells.number(row, column).orElseThrow(), 0);
  }
}
