package pondtally.stage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import pondtally.analysis.AnalysisSettings;
import pondtally.analysis.ContributionProgram;
import pondtally.analysis.ContributionYears;
import pondtally.analysis.EstimatedCosts;
import pondtally.analysis.Prices;
import pondtally.check.CheckSettings;
import pondtally.check.LikelyDuplicates;
import pondtally.check.ProgramChecks;
import pondtally.record.Budget;
import pondtally.record.ClusterRecords;
import pondtally.record.Expense;
import pondtally.table.ResultTable;
import pondtally.table.TableFile;
import pondtally.table.TableSpec;
import pondtally.work.Together;

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
    ProgramChecks.Checked program =
        ProgramChecks.check(
            ClusterRows.only(Budget.class, inputs.programRows()),
            ClusterRows.only(Expense.class, inputs.programRows()),
            checks);
    Optional<Path> longTables = wanted.longTables();
    ContributionLines lines = ContributionLines.of(inputs, ContributionYears.of(program.budgets()));
    Progress.now(Progress.Step.COUNTING);
    ClusterOutcome outcome =
        OutcomeStage.run(
            clusters,
            checks,
            settings,
            prices,
            longTables
                .map(folder -> new OutcomeStage.ContributionTask(made(runs(folder)), lines))
                .orElse(null),
            wanted.scope());
    outcome.scoping().requireKnown(program.budgets());
    outcome.findings().addAll(program.findings());
    outcome.verdicts().addAll(program.verdicts());
    Progress.now(Progress.Step.ANALYSING);
    Subjects subjects = new Subjects(outcome, program, settings, prices, wanted);
    List<TableFile> files = new ArrayList<>();
    List<Supplier<List<ResultTable>>> work = new ArrayList<>();
    longTables.ifPresent(
        folder ->
            work.add(
                () -> {
                  files.add(contributions(folder, outcome, program, settings, lines));
                  return List.of();
                }));
    List<CheckTables> noticed = new ArrayList<>();
    work.add(
        () -> {
          outcome.findings().addAll(LikelyDuplicates.among(outcome.places()));
          noticed.add(CheckTables.of(spark, inputs, outcome));
          return noticed.get(0).tables();
        });
    work.addAll(subjects.tables());
    List<ResultTable> tables = new ArrayList<>(Together.run(spark.defaultParallelism(), work));
    CheckTables checked = noticed.get(0);
    List<TableSpec> declared = TableSpec.all();
    tables.sort(Comparator.comparingInt(table -> declared.indexOf(table.spec())));
    return new Results(tables, files, checked.account(), checked.issues());
  }

  private static TableFile contributions(
      Path folder,
      ClusterOutcome outcome,
      ProgramChecks.Checked program,
      AnalysisSettings settings,
      ContributionLines lines) {
    return ContributionFile.write(
        folder,
        runs(folder),
        outcome.runs(),
        lines,
        ContributionProgram.contributions(
            EstimatedCosts.of(outcome.tally().estimated(), settings), program.expenses()));
  }

  private static Path runs(Path folder) {
    return folder.resolve("runs");
  }

  private static String made(Path folder) {
    try {
      return Files.createDirectory(folder).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
