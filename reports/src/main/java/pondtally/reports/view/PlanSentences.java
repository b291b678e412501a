package pondtally.reports.view;

import java.util.List;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.NumberText;

/** How often to visit, what lapses and what became of requests, in sentences. */
final class PlanSentences {

  private PlanSentences() {}

  static void addTo(List<Sentence> sentences, TablePackage tables) {
    interval(sentences, tables);
    requests(sentences, tables);
    lapses(sentences, tables);
  }

  private static void interval(List<Sentence> sentences, TablePackage tables) {
    Rows all = Rows.of(tables, "visit_interval").where("grouping", "all").where("group", "all");
    all.first()
        .filter(row -> Cells.number(row, "best_days").isPresent())
        .filter(row -> Cells.number(row, "nearly_to_days").isPresent())
        .ifPresent(row -> sentences.add(interval(all, row)));
  }

  private static Sentence interval(Rows all, Row row) {
    return Said.of("view.PlanSentences.visits-and-unnoticed-damage-together-cost")
        .cell("bestDays", all, Cells.count(row, "best_days", "days"), "best_days")
        .cell(
            "costPerYearUsd",
            all,
            NumberText.dollars(Cells.number(row, "cost_per_year_usd").orElseThrow()),
            "cost_per_year_usd")
        .cell("nearlyFromDays", all, Cells.count(row, "nearly_from_days"), "nearly_from_days")
        .cell("nearlyToDays", all, Cells.count(row, "nearly_to_days", "days"), "nearly_to_days")
        .build();
  }

  private static void requests(List<Sentence> sentences, TablePackage tables) {
    Rows all =
        Rows.of(tables, "requests")
            .where("grouping", "all")
            .where("group", "all")
            .where("year", "all");
    all.first()
        .ifPresent(
            row ->
                sentences.add(
                    Said.of("view.PlanSentences.requests-for-a-device-on-record")
                        .cell("asked", all, Cells.count(row, "asked"), "asked")
                        .cell("installed", all, Cells.count(row, "installed"), "installed")
                        .cell("unsuitable", all, Cells.count(row, "unsuitable"), "unsuitable")
                        .cell("declined", all, Cells.count(row, "declined"), "declined")
                        .cell("waiting", all, Cells.count(row, "waiting"), "waiting")
                        .build()));
  }

  private static void lapses(List<Sentence> sentences, TablePackage tables) {
    Rows all = Rows.of(tables, "lapses");
    if (all.list().isEmpty()) {
      return;
    }
    Rows lapsed = all.where("standing", "lapsed");
    Rows soon = all.where("standing", "within-90-days");
    Rows year = all.where("standing", "within-a-year");
    sentences.add(
        Said.of("view.PlanSentences.agreements-and-permits-of-sites-with")
            .rows("lapsed", lapsed, NumberText.count(lapsed.list().size()))
            .rows("soon", soon, NumberText.count(soon.list().size()))
            .rows("year", year, NumberText.count(year.list().size()))
            .build());
  }
}
