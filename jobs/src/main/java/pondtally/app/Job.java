package pondtally.app;

import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import pondtally.check.FileFault;
import pondtally.check.IssueBook;
import pondtally.check.UserError;
import pondtally.intake.FixLists;
import pondtally.intake.InputFile;
import pondtally.intake.IntakeSettings;
import pondtally.intake.ProgramFiles;
import pondtally.intake.ProgramFolder;
import pondtally.record.ClusterRecords;
import pondtally.stage.AnalysisStage;
import pondtally.stage.CheckStage;
import pondtally.stage.HistoryStage;
import pondtally.stage.Inputs;
import pondtally.stage.IntakeStage;
import pondtally.stage.OnRequest;
import pondtally.stage.Results;

/** The whole way from a program folder to result tables, on one page. */
public final class Job {

  private Job() {}

  /**
   * Runs the job.
   *
   * @throws UserError when the input cannot be used
   */
  public static JobResult run(JobRequest request) {
    return inSession(
        request,
        (spark, asked, settings, program) ->
            run(spark, asked, settings, program, UnaryOperator.identity()));
  }

  /**
   * Checks the rows and computes nothing: the issues and the row account that a report of the same
   * folder has too.
   *
   * @throws UserError when the input cannot be used
   */
  public static IssueBook check(JobRequest request) {
    return inSession(request, Job::check);
  }

  /** What is done with a program folder in a session. */
  private interface Task<T> {
    T run(
        JavaSparkContext spark, JobRequest request, ProgramSettings settings, ProgramFiles program);
  }

  private static <T> T inSession(JobRequest request, Task<T> task) {
    ProgramSettings settings = SettingsFile.read(request.folder());
    ProgramFiles program = program(request);
    try (Session session = Session.local(request.cores())) {
      return task.run(session.spark(), request, settings, program);
    } catch (Exception e) {
      throw unwrapped(e);
    }
  }

  private static IssueBook check(
      JavaSparkContext spark, JobRequest request, ProgramSettings settings, ProgramFiles program) {
    IntakeSettings intake = new IntakeSettings(request.today());
    Inputs inputs = IntakeStage.read(spark, program, intake);
    UsableInput.require(request.folder(), program.files(), inputs.reports());
    RunSettings run =
        RunSettings.of(
            settings, request, inputs.reports(), PriceSource.of(program.files(), intake));
    return CheckStage.run(inputs, HistoryStage.clusters(spark, inputs), run.checks());
  }

  /**
   * Runs the job in a session of a cluster.
   *
   * @param forTasks the file as the machines of the cluster find it
   */
  static JobResult run(Session session, JobRequest request, UnaryOperator<InputFile> forTasks) {
    ProgramSettings settings = SettingsFile.read(request.folder());
    ProgramFiles program = program(request);
    try {
      return run(session.spark(), request, settings, program, forTasks);
    } catch (Exception e) {
      throw unwrapped(e);
    }
  }

  private static ProgramFiles program(JobRequest request) {
    ProgramFiles found = ProgramFolder.open(request.folder());
    return found.with(FixLists.applied(found.files()));
  }

  private static JobResult run(
      JavaSparkContext spark,
      JobRequest request,
      ProgramSettings settings,
      ProgramFiles program,
      UnaryOperator<InputFile> forTasks) {
    List<InputFile> files = program.files();
    IntakeSettings intake = new IntakeSettings(request.today());
    Inputs inputs =
        IntakeStage.read(spark, program.with(files.stream().map(forTasks).toList()), intake);
    UsableInput.require(request.folder(), files, inputs.reports());
    UnreadableFiles.refuse(files, inputs.reports());
    RunSettings run =
        RunSettings.of(settings, request, inputs.reports(), PriceSource.of(files, intake));
    JavaRDD<ClusterRecords> clusters = HistoryStage.clusters(spark, inputs);
    Results results =
        AnalysisStage.run(
            spark,
            inputs,
            clusters,
            run.checks(),
            run.analysis(),
            run.prices(),
            new OnRequest(
                request.longTables().folderFor(inputs.reports()),
                settings.wetlandWorth(),
                request.scope()));
    return new JobResult(
        program,
        results.tables(),
        results.files(),
        run.facts(),
        results.account(),
        results.issues(),
        settings.source().orElse(""));
  }

  /**
   * The user's own mistake, or a fault of ours, out of the wrapping that Spark puts around an error
   * in a task; that is a checked exception, although no method of Spark's declares it.
   */
  private static RuntimeException unwrapped(Exception e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof UserError || cause instanceof FileFault) {
        return (RuntimeException) cause;
      }
    }
    return e instanceof RuntimeException fault
        ? fault
        : new IllegalStateException("a task failed", e);
  }
}
