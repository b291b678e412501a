package pondtally.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import pondtally.analysis.AnalysisSettings;
import pondtally.analysis.BenefitAnalysis;
import pondtally.analysis.BenefitFits;
import pondtally.analysis.CauseAnalysis;
import pondtally.analysis.EstimatedCosts;
import pondtally.analysis.ExpenseRows;
import pondtally.analysis.FitAnalysis;
import pondtally.analysis.IncidenceAnalysis;
import pondtally.analysis.IntervalAnalysis;
import pondtally.analysis.MeanLifeAnalysis;
import pondtally.analysis.Prices;
import pondtally.analysis.ProgramTally;
import pondtally.analysis.RateAnalysis;
import pondtally.analysis.RateRatioAnalysis;
import pondtally.analysis.RepeatAnalysis;
import pondtally.analysis.SampleSizeAnalysis;
import pondtally.analysis.SensitivityAnalysis;
import pondtally.analysis.SurvivalAnalysis;
import pondtally.analysis.TestAnalysis;
import pondtally.analysis.WorklistAnalysis;
import pondtally.check.ProgramChecks;
import pondtally.table.RecordRows;
import pondtally.table.ResultTable;

/**
 * The analyses of what was counted, in groups that share what they compute and nothing with each
 * other: each can run beside the others. The longest stand first.
 */
record Subjects(
    ClusterOutcome outcome,
    ProgramChecks.Checked program,
    AnalysisSettings settings,
    Prices prices,
    OnRequest wanted) {

  List<Supplier<List<ResultTable>>> tables() {
    return List.of(
        this::season,
        this::tests,
        this::money,
        this::curves,
        this::effects,
        this::fits,
        this::survival,
        this::failures,
        this::amounts,
        this::rows);
  }

  private ProgramTally tally() {
    return outcome.tally();
  }

  private List<ResultTable> season() {
    return SeasonTables.of(outcome, settings);
  }

  private List<ResultTable> tests() {
    return List.of(
        RecordRows.table("group_tests", TestAnalysis.rows(tally().lives(), settings.groupsBelow())),
        many(
            "cumulative_incidence",
            IncidenceAnalysis.Row.class,
            rows -> IncidenceAnalysis.rows(tally().lives(), rows)));
  }

  private List<ResultTable> money() {
    BenefitFits fits = BenefitFits.of(tally().benefits());
    return List.of(
        RecordRows.table("benefit_cost", BenefitAnalysis.rows(tally().benefits(), fits, settings)),
        RecordRows.table(
            "benefit_years", BenefitAnalysis.years(tally().benefits(), fits, settings)),
        RecordRows.table(
            "sensitivity", SensitivityAnalysis.rows(tally().benefits(), fits, settings)),
        RecordRows.table("worklist", WorklistAnalysis.rows(outcome.worklist(), fits, settings)));
  }

  private List<ResultTable> curves() {
    IntervalAnalysis intervals = outcome.models().intervals().with(outcome.second());
    return List.of(
        many(
            "survival_curves",
            SurvivalAnalysis.CurveRow.class,
            rows -> {
              SurvivalAnalysis.curves(tally().lives(), rows);
              intervals.curves(rows);
            }),
        RecordRows.table(
            "survival_summary",
            both(SurvivalAnalysis.summaries(tally().lives(), settings), intervals.summaries())),
        RecordRows.table("dating_comparison", intervals.datings()));
  }

  private static <T> List<T> both(List<T> a, List<T> b) {
    List<T> rows = new ArrayList<>(a);
    rows.addAll(b);
    return rows;
  }

  private List<ResultTable> effects() {
    return List.of(
        RecordRows.table("cost_effectiveness", tally().effects().rows(outcome.second().effects())));
  }

  private List<ResultTable> fits() {
    FitAnalysis fits = FitAnalysis.of(tally().lives());
    return List.of(
        RecordRows.table("parametric_fits", fits.rows()),
        RecordRows.table("fit_check", fits.checks()));
  }

  private List<ResultTable> survival() {
    int below = settings.groupsBelow();
    return List.of(
        RecordRows.table("mean_life_differences", MeanLifeAnalysis.rows(tally().lives(), settings)),
        RecordRows.table("sample_size", SampleSizeAnalysis.rows(tally().lives(), below)),
        RecordRows.table("hazard_ratios", outcome.models().hazards().rows(outcome.second())),
        many(
            "repeat_failures",
            RepeatAnalysis.Row.class,
            rows -> RepeatAnalysis.rows(tally().repeats(), outcome.second(), rows)));
  }

  /** A table that has a row for many an age: it waits packed until it is written. */
  private static <R extends Record> ResultTable many(
      String name, Class<R> kind, Consumer<Consumer<R>> source) {
    PackedRows<R> rows = new PackedRows<>(kind);
    source.accept(rows::add);
    rows.close();
    return RecordRows.table(name, rows);
  }

  private List<ResultTable> failures() {
    return List.of(
        RecordRows.table(
            "rate_ratios", RateRatioAnalysis.rows(tally().rates(), settings.groupsBelow())),
        RecordRows.table("failure_rates", RateAnalysis.rows(tally().rates(), settings)),
        RecordRows.table("failure_causes", CauseAnalysis.rows(tally().rates())));
  }

  private List<ResultTable> amounts() {
    List<ResultTable> tables = new ArrayList<>();
    tables.add(RecordRows.table("wetland", tally().wetland().rows()));
    tables.add(RecordRows.table("removals_avoided", tally().removals().rows()));
    tables.add(RecordRows.table("properties", tally().properties().rows()));
    tables.add(
        RecordRows.table(
            "funding", outcome.scoping().funding(tally().funding(), program, settings)));
    tables.add(RecordRows.table("funder_shares", outcome.scoping().shares()));
    tables.add(
        RecordRows.table(
            "program_expenses", ExpenseRows.rows(program.expenses(), settings, prices)));
    wanted
        .wetlandWorth()
        .map(worth -> worth.rows(tally().wetland().rows(), prices))
        .ifPresent(rows -> tables.add(RecordRows.table("wetland_value", rows)));
    return tables;
  }

  private List<ResultTable> rows() {
    EstimatedCosts estimated = EstimatedCosts.of(tally().estimated(), settings);
    return List.of(
        RecordRows.table("completeness", tally().completeness().rows()),
        RecordRows.table("sites", outcome.sites()),
        RecordRows.table("devices", estimated.fill(outcome.devices())),
        RecordRows.table("costs", tally().costs().rows(estimated)));
  }
}
