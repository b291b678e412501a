package pondtally.reports.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.NumberText;

/** How good the records are, and what these figures cannot say. Names nobody. */
final class GrantEvidence {

  private static final Map<String, String> SUBJECTS = subjects();

  private GrantEvidence() {}

  private static Map<String, String> subjects() {
    Map<String, String> subjects = new LinkedHashMap<>();
    subjects.put("devices", "devices in service");
    subjects.put("survival_summary", "how long devices last");
    subjects.put("properties", "properties protected");
    subjects.put("wetland", "wetland kept");
    subjects.put("removals_avoided", "removals avoided");
    subjects.put("costs", "cost");
    subjects.put("cost_effectiveness", "cost per unit of outcome");
    subjects.put("benefit_cost", "benefit against cost");
    subjects.put("funding", "who paid, and match");
    subjects.put("season_forecast", "next season");
    return subjects;
  }

  static GrantSection of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>(Summary.scope(tables));
    rows(tables, sentences);
    silent(tables, sentences);
    missing(tables, sentences);
    sentences.add(
        GrantCells.words(
            "The records are what crews wrote down in the course of their work, not a planned trial. Sites were chosen because there was a conflict, and nothing here compares them with sites left alone. What was not recorded is not known and is never counted as zero."));
    return new GrantSection(1, "Evidence and its limits", sentences, List.of(), Map.of());
  }

  private static void rows(TablePackage tables, List<Sentence> sentences) {
    Rows account = Rows.of(tables, "row_account");
    if (account.list().isEmpty()) {
      return;
    }
    sentences.add(
        Sentence.of("Behind these figures stand ")
            .sum(account, GrantCells.summed(account, "rows_read"), "rows_read")
            .say(" rows of partners' records. Used as they stood: ")
            .sum(account, GrantCells.summed(account, "used"), "used")
            .say("; used with a listed change: ")
            .sum(account, GrantCells.summed(account, "changed"), "changed")
            .say("; set aside with the reason: ")
            .sum(account, GrantCells.summed(account, "set_aside"), "set_aside")
            .say("; duplicates: ")
            .sum(account, GrantCells.summed(account, "duplicate"), "duplicate")
            .say(". Every row is accounted for.")
            .build());
  }

  private static void silent(TablePackage tables, List<Sentence> sentences) {
    String name = tables.fact("period_year");
    Rows year = Rows.of(tables, "completeness").where("year", name);
    Rows none = year.where("last_date_sent", "");
    if (none.list().isEmpty()) {
      return;
    }
    sentences.add(
        Sentence.of("")
            .rows(none, NumberText.count(none.list().size(), "partners"))
            .say(" of ")
            .rows(year, NumberText.count(year.list().size()))
            .say(" sent nothing dated in " + name + ".")
            .build());
  }

  private static void missing(TablePackage tables, List<Sentence> sentences) {
    List<String> missing =
        SUBJECTS.entrySet().stream()
            .filter(subject -> Rows.of(tables, subject.getKey()).list().isEmpty())
            .map(Map.Entry::getValue)
            .toList();
    if (!missing.isEmpty()) {
      sentences.add(
          GrantCells.words(
              "Not in these figures: "
                  + String.join("; ", missing)
                  + ". Take them from your own books, or leave them out."));
    }
  }
}
