package pondtally.reports.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** How good the records are, and what these figures cannot say. Names nobody. */
final class GrantEvidence {

  private static final Map<String, String> SUBJECTS = subjects();

  private GrantEvidence() {}

  private static Map<String, String> subjects() {
    Map<String, String> subjects = new LinkedHashMap<>();
    subjects.put("devices", Messages.of("view.GrantEvidence.devices-in-service"));
    subjects.put("survival_summary", Messages.of("view.GrantEvidence.how-long-devices-last"));
    subjects.put("properties", Messages.of("view.GrantEvidence.properties-protected"));
    subjects.put("wetland", Messages.of("view.GrantEvidence.wetland-kept"));
    subjects.put("removals_avoided", Messages.of("common.removals-avoided"));
    subjects.put("costs", "cost");
    subjects.put("cost_effectiveness", Messages.of("view.GrantEvidence.cost-per-unit-of-outcome"));
    subjects.put("benefit_cost", Messages.of("view.GrantEvidence.benefit-against-cost"));
    subjects.put("funding", Messages.of("view.GrantEvidence.who-paid-and-match"));
    subjects.put("season_forecast", Messages.of("view.GrantEvidence.next-season"));
    return subjects;
  }

  static GrantSection of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>(Summary.scope(tables));
    rows(tables, sentences);
    silent(tables, sentences);
    missing(tables, sentences);
    sentences.add(
        GrantCells.words(Messages.of("view.GrantEvidence.the-records-are-what-crews-wrote")));
    return new GrantSection(
        1,
        Messages.of("view.GrantEvidence.evidence-and-its-limits"),
        sentences,
        List.of(),
        Map.of());
  }

  private static void rows(TablePackage tables, List<Sentence> sentences) {
    Rows account = Rows.of(tables, "row_account");
    if (account.list().isEmpty()) {
      return;
    }
    sentences.add(
        Said.of("view.GrantEvidence.behind-these-figures-stand-rows-of")
            .sum("rowsRead", account, GrantCells.summed(account, "rows_read"), "rows_read")
            .sum("used", account, GrantCells.summed(account, "used"), "used")
            .sum("changed", account, GrantCells.summed(account, "changed"), "changed")
            .sum("setAside", account, GrantCells.summed(account, "set_aside"), "set_aside")
            .sum("duplicate", account, GrantCells.summed(account, "duplicate"), "duplicate")
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
        Said.of("view.GrantEvidence.of-sent-nothing-dated-in")
            .rows("none", none, NumberText.count(none.list().size(), "partners"))
            .rows("year", year, NumberText.count(year.list().size()))
            .words("name", name)
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
              Messages.of(
                  "view.GrantEvidence.not-in-these-figures-take-them",
                  Map.of("part", String.join("; ", missing)))));
    }
  }
}
