package pondtally.stage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import pondtally.analysis.AnalysisSettings;
import pondtally.analysis.BenefitAnalysis;
import pondtally.analysis.BenefitFits;
import pondtally.analysis.CauseAnalysis;
import pondtally.analysis.ContributionProgram;
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
import pondtally.check.CheckSettings;
import pondtally.check.LikelyDuplicates;
import pondtally.check.ProgramChecks;
import pondtally.record.Budget;
import pondtally.record.ClusterRecords;
import pondtally.record.Expense;
import pondtally.table.RecordRows;
import pondtally.table.ResultTable;
import pondtally.table.TableFile;
import pondtally.table.TableSpec;

/** From the rows of each cluster to result tables: Spark counts, plain Java computes. */
public final class AnalysisStage {

  private AnalysisStage() {}

  /**
   * Runs every analysis.
   *
   * @param wanted what is added on request
   */
  public static Results run(
      JavaSparkContext spark,
      Inputs inputs,
      JavaRDD<ClusterRecords> clusters,
      CheckSettings checks,
      AnalysisSettings settings,
      Prices prices,
      OnRequest wanted) {
    Optional<Path> longTables = wanted.longTables();
    Optional<Path> runs = longTables.map(folder -> folder.resolve("runs"));
    ClusterOutcome outcome =
        OutcomeStage.run(
            clusters,
            checks,
            settings,
            prices,
            runs.map(AnalysisStage::made).orElse(null),
            wanted.scope());
    ProgramChecks.Checked program =
        ProgramChecks.check(
            ClusterRows.only(Budget.class, inputs.programRows()),
            ClusterRows.only(Expense.class, inputs.programRows()),
            checks);
    outcome.scoping().requireKnown(program.budgets());
    outcome.findings().addAll(program.findings());
    outcome.findings().addAll(LikelyDuplicates.among(outcome.places()));
    outcome.verdicts().addAll(program.verdicts());
    CheckTables checked = CheckTables.of(spark, inputs, outcome);
    List<ResultTable> tables = new ArrayList<>(checked.tables());
    tables.addAll(subjects(outcome, settings));
    tables.addAll(money(outcome, program, settings));
    wanted
        .wetlandWorth()
        .map(worth -> worth.rows(outcome.tally().wetland().rows(), prices))
        .ifPresent(rows -> tables.add(RecordRows.table("wetland_value", rows)));
    tables.addAll(SeasonTables.of(outcome, settings));
    tables.add(
        RecordRows.table(
            "program_expenses", ExpenseRows.rows(program.expenses(), settings, prices)));
    List<TableSpec> declared = TableSpec.all();
    tables.sort(Comparator.comparingInt(table -> declared.indexOf(table.spec())));
    List<TableFile> files =
        longTables
            .map(
                folder ->
                    ContributionFile.write(
                        folder,
                        folder.resolve("runs"),
                        outcome.runs(),
                        inputs,
                        ContributionProgram.of(
                            EstimatedCosts.of(outcome.tally().estimated(), settings),
                            program.budgets(),
                            program.expenses())))
            .stream()
            .toList();
    return new Results(tables, files, checked.account(), checked.issues());
  }

  private static String made(Path folder) {
    try {
      return Files.createDirectory(folder).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<ResultTable> subjects(ClusterOutcome outcome, AnalysisSettings settings) {
    ProgramTally tally = outcome.tally();
    EstimatedCosts estimated = EstimatedCosts.of(tally.estimated(), settings);
    int below = settings.groupsBelow();
    IntervalAnalysis intervals = outcome.models().intervals().with(outcome.second());
    FitAnalysis fits = FitAnalysis.of(tally.lives());
    return List.of(
        RecordRows.table("completeness", tally.completeness().rows()),
        RecordRows.table("sites", outcome.sites()),
        RecordRows.table("devices", estimated.fill(outcome.devices())),
        RecordRows.table(
            "survival_curves", both(SurvivalAnalysis.curves(tally.lives()), intervals.curves())),
        RecordRows.table(
            "survival_summary",
            both(SurvivalAnalysis.summaries(tally.lives(), settings), intervals.summaries())),
        RecordRows.table("cumulative_incidence", IncidenceAnalysis.rows(tally.lives())),
        RecordRows.table("group_tests", TestAnalysis.rows(tally.lives(), below)),
        RecordRows.table("dating_comparison", intervals.datings()),
        RecordRows.table("mean_life_differences", MeanLifeAnalysis.rows(tally.lives(), settings)),
        RecordRows.table("sample_size", SampleSizeAnalysis.rows(tally.lives(), below)),
        RecordRows.table("rate_ratios", RateRatioAnalysis.rows(tally.rates(), below)),
        RecordRows.table("hazard_ratios", outcome.models().hazards().rows(outcome.second())),
        RecordRows.table("repeat_failures", RepeatAnalysis.rows(tally.repeats(), outcome.second())),
        RecordRows.table("parametric_fits", fits.rows()),
        RecordRows.table("fit_check", fits.checks()),
        RecordRows.table("failure_rates", RateAnalysis.rows(tally.rates(), settings)),
        RecordRows.table("failure_causes", CauseAnalysis.rows(tally.rates())),
        RecordRows.table("costs", tally.costs().rows(estimated)),
        RecordRows.table("cost_effectiveness", tally.effects().rows(outcome.second().effects())),
        RecordRows.table("wetland", tally.wetland().rows()),
        RecordRows.table("removals_avoided", tally.removals().rows()),
        RecordRows.table("properties", tally.properties().rows()));
  }

  private static <T> List<T> both(List<T> a, List<T> b) {
    List<T> rows = new ArrayList<>(a);
    rows.addAll(b);
    return rows;
  }

  private static List<ResultTable> money(
      ClusterOutcome outcome, ProgramChecks.Checked program, AnalysisSettings settings) {
    ProgramTally tally = outcome.tally();
    BenefitFits fits = BenefitFits.of(tally.benefits());
    return List.of(
        RecordRows.table("benefit_cost", BenefitAnalysis.rows(tally.benefits(), fits, settings)),
        RecordRows.table("benefit_years", BenefitAnalysis.years(tally.benefits(), fits, settings)),
        RecordRows.table("sensitivity", SensitivityAnalysis.rows(tally.benefits(), fits, settings)),
        RecordRows.table("worklist", WorklistAnalysis.rows(outcome.worklist(), fits, settings)),
        RecordRows.table("funding", outcome.scoping().funding(tally.funding(), program, settings)),
        RecordRows.table("funder_shares", outcome.scoping().shares()));
  }
}
