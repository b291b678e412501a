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
    return Sentence.of("Visits and unnoticed damage together cost least with a visit every ")
        .cell(all, Cells.count(row, "best_days", "days"), "best_days")
        .say(": ")
        .cell(
            all,
            NumberText.dollars(Cells.number(row, "cost_per_year_usd").orElseThrow()),
            "cost_per_year_usd")
        .say(" a device and year. Any interval from ")
        .cell(all, Cells.count(row, "nearly_from_days"), "nearly_from_days")
        .say(" to ")
        .cell(all, Cells.count(row, "nearly_to_days", "days"), "nearly_to_days")
        .say(" costs at most a twentieth more. Damage that nobody recorded is not in this.")
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
                    Sentence.of("Requests for a device on record: ")
                        .cell(all, Cells.count(row, "asked"), "asked")
                        .say(". Installed: ")
                        .cell(all, Cells.count(row, "installed"), "installed")
                        .say("; site unsuitable: ")
                        .cell(all, Cells.count(row, "unsuitable"), "unsuitable")
                        .say("; declined: ")
                        .cell(all, Cells.count(row, "declined"), "declined")
                        .say("; waiting: ")
                        .cell(all, Cells.count(row, "waiting"), "waiting")
                        .say(".")
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
        Sentence.of("Agreements and permits of sites with a device in service: ")
            .rows(lapsed, NumberText.count(lapsed.list().size()))
            .say(" have lapsed, ")
            .rows(soon, NumberText.count(soon.list().size()))
            .say(" lapse within three months and ")
            .rows(year, NumberText.count(year.list().size()))
            .say(" more within a year.")
            .build());
  }
}
