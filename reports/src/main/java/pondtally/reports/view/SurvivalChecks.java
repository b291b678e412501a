package pondtally.reports.view;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/**
 * What a reader of the survival figures would ask next: whether another way of dating failures, or
 * a comparison within watersheds, says the same.
 */
final class SurvivalChecks {

  private static final int[] HORIZONS = {5, 3, 1};
  private static final double SIGNIFICANT = 0.05;
  private static final String RAW = "pipe";
  private static final String WITHIN = "pipe, stratified by watershed";

  private SurvivalChecks() {}

  /** The estimate that needs no day of failure, beside the curve that was dated. */
  static void undated(TablePackage tables, List<Sentence> sentences) {
    Rows all = Rows.of(tables, "survival_summary").where("grouping", "all").where("group", "all");
    Rows dated = all.where("method", SurvivalMethod.of());
    Rows interval = all.where("method", "interval");
    if (dated.first().isEmpty() || interval.first().isEmpty()) {
      return;
    }
    for (int years : HORIZONS) {
      String column = "survival_" + years + "y";
      Optional<Estimate> share = share(interval.first().get(), column);
      Optional<Estimate> curve = share(dated.first().get(), column);
      if (share.isPresent() && curve.isPresent()) {
        sentences.add(
            Said.of("view.SurvivalChecks.nobody-saw-the-devices-fail-failures")
                .cell(
                    "column",
                    interval,
                    share.get().ofHundred(),
                    column,
                    column + "_lower",
                    column + "_upper")
                .words("years", NumberText.years(years))
                .words("dating", dating(tables))
                .cell(
                    "column2",
                    dated,
                    curve.get().ofHundred(),
                    column,
                    column + "_lower",
                    column + "_upper")
                .build());
        return;
      }
    }
  }

  /** What the curve does about the day of a failure. */
  static String dating(TablePackage tables) {
    return tables.fact("failure_dated").equals("discovery")
        ? Messages.of("view.SurvivalChecks.dates-them-by-the-visit-that")
        : Messages.of("view.SurvivalChecks.dates-them-halfway-between-the-two");
  }

  private static Optional<Estimate> share(Row row, String column) {
    return Estimate.of(
        Cells.number(row, column),
        Cells.number(row, column + "_lower"),
        Cells.number(row, column + "_upper"));
  }

  /** Whether pipe types compared within watersheds differ as they do over all of them. */
  static void withinWatersheds(TablePackage tables, List<Sentence> sentences) {
    Rows tests =
        Rows.of(tables, "group_tests")
            .where("test", "log-rank")
            .where("grouping", "pipe")
            .where("group_a", "")
            .where("group_b", "");
    Rows raw = tests.where("strata", "");
    Rows within = tests.where("strata", "watershed");
    OptionalDouble rawP = p(raw);
    OptionalDouble withinP = p(within);
    if (rawP.isPresent() && withinP.isPresent()) {
      boolean first = rawP.getAsDouble() < SIGNIFICANT;
      boolean second = withinP.getAsDouble() < SIGNIFICANT;
      sentences.add(
          Said.of("view.SurvivalChecks.over-all-watersheds-within-watersheds")
              .words("second", words(first, second))
              .cell("pValue", raw, SurvivalSentences.probability(rawP.getAsDouble()), "p_value")
              .cell(
                  "pValue2",
                  within,
                  SurvivalSentences.probability(withinP.getAsDouble()),
                  "p_value")
              .build());
    }
    ratios(tables, sentences);
  }

  private static String words(boolean raw, boolean within) {
    if (raw && !within) {
      return Messages.of("view.SurvivalChecks.the-two-comparisons-disagree-pipe-types");
    }
    if (within && !raw) {
      return Messages.of("view.SurvivalChecks.the-two-comparisons-disagree-pipe-types-2");
    }
    return raw
        ? Messages.of("view.SurvivalChecks.compared-within-the-same-watershed-pipe")
        : Messages.of("view.SurvivalChecks.compared-within-the-same-watershed-pipe-2");
  }

  private static OptionalDouble p(Rows rows) {
    return rows.first().map(row -> Cells.number(row, "p_value")).orElse(OptionalDouble.empty());
  }

  /** Each pipe type whose hazard ratio says one thing over all and another within watersheds. */
  private static void ratios(TablePackage tables, List<Sentence> sentences) {
    Rows models = Rows.of(tables, "hazard_ratios").where("term", "pipe");
    for (Row row : models.where("model", RAW).list()) {
      Rows raw = models.where("model", RAW).where("level", row.text("level"));
      Rows within = models.where("model", WITHIN).where("level", row.text("level"));
      Optional<Estimate> a = raw.first().flatMap(SurvivalChecks::ratio);
      Optional<Estimate> b = within.first().flatMap(SurvivalChecks::ratio);
      if (a.isPresent() && b.isPresent() && side(raw) != side(within)) {
        sentences.add(
            Said.of("view.SurvivalChecks.for-against-the-two-disagree-the")
                .words("devices", Groups.devices("pipe", row.text("level")))
                .words("devices2", Groups.devices("pipe", row.text("reference")))
                .cell("hazardRatio", raw, a.get().ratio(), "hazard_ratio", "lower", "upper")
                .cell("hazardRatio2", within, b.get().ratio(), "hazard_ratio", "lower", "upper")
                .build());
      }
    }
  }

  private static Optional<Estimate> ratio(Row row) {
    return Estimate.of(
            Cells.number(row, "hazard_ratio"),
            Cells.number(row, "lower"),
            Cells.number(row, "upper"))
        .filter(Estimate::hasLimits);
  }

  /** Above 1, below 1, or not shown to be either. */
  private static int side(Rows rows) {
    Row row = rows.first().orElseThrow();
    double lower = Cells.number(row, "lower").orElseThrow();
    double upper = Cells.number(row, "upper").orElseThrow();
    return lower > 1 ? 1 : upper < 1 ? -1 : 0;
  }
}
