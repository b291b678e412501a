package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Messages;
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
            Messages.of("view.GrantSeason.one-row-for-each-coming-year"),
            Messages.of("view.GrantSeason.expected-not-promised-likely-95-prediction"));
    return sentences.isEmpty() && shown.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new GrantSection(
                1,
                Messages.of("common.Next-season"),
                sentences,
                shown,
                Map.of(
                    "season-forecast",
                    Messages.of("view.GrantSeason.failures-expected-in-the-coming-years"))));
  }

  private static GrantTable.Builder table(Rows all) {
    GrantTable.Builder table =
        GrantTable.of(Messages.of("view.GrantSeason.what-the-coming-years-are-expected"))
            .words(Messages.of("common.Year"))
            .words(Messages.of("common.Failures"))
            .numbers(Messages.of("common.Visits"), Messages.of("common.Hours"))
            .words(Messages.of("common.Cost"));
    all.list().stream()
        .map(row -> row.text("year"))
        .distinct()
        .sorted()
        .forEach(
            year -> {
              Rows at = all.where("year", year);
              table.row(
                  GrantCells.words(SeasonYear.name(at.lines().get(0))),
                  GrantCells.estimate(at, Estimate::whole, "expected_failures", "lower", "upper"),
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
        Said.of("view.GrantSeason.stand-in-the-list-of-where")
            .rows("all", all, NumberText.count(all.list().size(), "devices"))
            .build());
  }
}
