package pondtally.reports.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import pondtally.app.Job;
import pondtally.app.JobRequest;
import pondtally.app.JobResult;
import pondtally.check.MessageGroups;

/** {@code pondtally check}: what became of every row, without making a report. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionText.class,
    sortOptions = false,
    header = {"Says which rows of a program folder count, which do not, and why.", ""},
    footer = {
      "",
      "Example:",
      "  pondtally check my-program",
      "",
      "Exits with 1 if any row was set aside."
    })
final class CheckCommand implements Callable<Integer> {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "The program folder with the partners' files.")
  private Path folder;

  @Override
  public Integer call() {
    if (!Launcher.isHere()) {
      return Launcher.relaunch(
          spec.commandLine().getParent().getParseResult().originalArgs(), folder);
    }
    JobResult result =
        Job.run(
            new JobRequest(
                folder,
                (int) LocalDate.now().toEpochDay(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Runtime.getRuntime().availableProcessors()));
    PrintWriter out = spec.commandLine().getOut();
    MessageGroups.lines(result.issues(), "").forEach(out::println);
    Summary.printAccount(out, result.account());
    boolean anySetAside = result.account().stream().anyMatch(row -> row.counts().setAside() > 0);
    return anySetAside ? Main.ROWS_SET_ASIDE : Main.DONE;
  }
}
