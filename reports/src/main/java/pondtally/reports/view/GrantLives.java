package pondtally.reports.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
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
    charts.put("survival", Messages.of("view.GrantLives.devices-that-had-not-failed-by"));
    charts.put("survival-by-pipe", Messages.of("view.GrantLives.devices-that-had-not-failed-by-2"));
    return new GrantSection(
        2, Messages.of("common.How-long-devices-last"), sentences, shown, charts);
  }

  private static void pipes(TablePackage tables, Rows survival, List<GrantTable> shown) {
    Rows rates = Rows.of(tables, "failure_rates").where("grouping", "pipe").where("year", "all");
    String column = "survival_" + YEARS + "y";
    GrantTable.Builder table =
        GrantTable.of(Messages.of("common.Failures-by-pipe-type"))
            .words(Messages.of("common.Pipe-type"))
            .numbers(
                Messages.of("common.Devices"),
                Messages.of("common.Failures"),
                Messages.of("common.Device-years"))
            .words(Messages.of("common.Failures-in-100-device-years"))
            .words(
                Messages.of(
                    "view.GrantLives.without-a-failure", Map.of("years", NumberText.years(YEARS))));
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
        Messages.of("view.GrantLives.one-row-for-each-pipe-type"),
        Messages.of("view.GrantLives.failures-and-their-rate-count-repeated"));
  }
}
