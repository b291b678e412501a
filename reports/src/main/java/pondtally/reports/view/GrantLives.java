package pondtally.reports.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.NumberText;

/** How long devices last, for the whole program in sentences and by pipe type in a table. */
final class GrantLives {

  private static final int YEARS = 3;

  private GrantLives() {}

  static GrantSection of(TablePackage tables) {
    List<Sentence> sentences = new ArrayList<>();
    Rows survival = Rows.of(tables, "survival_summary").where("method", SurvivalMethod.of());
    Rows all = survival.where("grouping", "all").where("group", "all");
    SurvivalSentences.working(all, sentences);
    SurvivalSentences.median(all, sentences);
    SurvivalSentences.small(survival.where("grouping", "pipe"), tables, sentences);
    SurvivalSentences.compared(tables, sentences);
    SurvivalChecks.withinWatersheds(tables, sentences);
    sentences.addAll(FailureSentences.of(tables));
    List<GrantTable> shown = new ArrayList<>();
    pipes(tables, survival.where("grouping", "pipe"), shown);
    Map<String, String> charts = new LinkedHashMap<>();
    charts.put("survival", "Devices that had not failed, by age.");
    charts.put("survival-by-pipe", "Devices that had not failed, by age and pipe type.");
    return new GrantSection(2, "How long devices last", sentences, shown, charts);
  }

  private static void pipes(TablePackage tables, Rows survival, List<GrantTable> shown) {
    Rows rates = Rows.of(tables, "failure_rates").where("grouping", "pipe").where("year", "all");
    String column = "survival_" + YEARS + "y";
    GrantTable.Builder table =
        GrantTable.of("Failures by pipe type")
            .words("Pipe type")
            .numbers("Devices", "Failures", "Device-years")
            .words("Failures in 100 device-years")
            .words(NumberText.years(YEARS) + " without a failure");
    rates.list().stream()
        .sorted(Groups.bySize())
        .map(row -> row.text("group"))
        .forEach(
            group -> {
              Rows row = rates.where("group", group);
              table.row(
                  GrantCells.words(GroupText.label("pipe", group)),
                  GrantCells.count(row, "devices"),
                  GrantCells.count(row, "failures"),
                  GrantCells.cell(row, "device_years", NumberText::rate),
                  GrantCells.estimate(
                      row, Estimate::rate, "per_100_device_years", "lower", "upper"),
                  GrantCells.estimate(
                      survival.where("group", group),
                      Estimate::ofHundred,
                      column,
                      column + "_lower",
                      column + "_upper"));
            });
    table.addTo(
        shown,
        "One row for each pipe type: devices, failures, time at risk, failure rate and share without a failure, with limits.",
        "Failures and their rate count repeated ones. Likely: 95% limits. Crews, sites and years differ between pipe types, so a difference need not come from the pipe.");
  }
}
