package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.NumberText;

/** What the next years are expected to take. */
final class GrantSeason {

  private GrantSeason() {}

  static Optional<GrantSection> of(TablePackage tables) {
    Rows all = GrantOutcomes.whole(tables, "season_forecast");
    List<Sentence> sentences = new ArrayList<>(SeasonSentences.of(tables));
    worklist(tables, sentences);
    List<GrantTable> shown = new ArrayList<>();
    table(all)
        .addTo(
            shown,
            "One row for each coming year: expected failures, visits, hours and dollars.",
            "Expected, not promised. Likely: 95% prediction limits. Holds if devices go on failing as they have and none is added.");
    return sentences.isEmpty() && shown.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new GrantSection(
                1,
                "Next season",
                sentences,
                shown,
                Map.of("season-forecast", "Failures expected in the coming years.")));
  }

  private static GrantTable.Builder table(Rows all) {
    GrantTable.Builder table =
        GrantTable.of("What the coming years are expected to take")
            .words("Year")
            .words("Failures")
            .numbers("Visits", "Hours")
            .words("Cost");
    all.list().stream()
        .map(row -> row.text("year"))
        .distinct()
        .sorted()
        .forEach(
            year -> {
              Rows at = all.where("year", year);
              table.row(
                  GrantCells.words(SeasonYear.name(at.lines().get(0))),
                  GrantCells.estimate(at, Estimate::rate, "expected_failures", "lower", "upper"),
                  GrantCells.cell(at, "visits", v -> NumberText.decimal(v, 0)),
                  GrantCells.cell(at, "hours", v -> NumberText.decimal(v, 0)),
                  GrantCells.estimate(
                      at, Estimate::dollars, "cost_usd", "cost_lower", "cost_upper"));
            });
    return table;
  }

  private static void worklist(TablePackage tables, List<Sentence> sentences) {
    Rows all = Rows.of(tables, "worklist");
    if (all.list().isEmpty()) {
      return;
    }
    sentences.add(
        Sentence.of("")
            .rows(all, NumberText.count(all.list().size(), "devices"))
            .say(" stand in the list of where to drive first, which is in program.xlsx.")
            .build());
  }
}
