package pondtally.reports.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pondtally.app.Job;
import pondtally.app.JobRequest;
import pondtally.app.JobResult;
import pondtally.app.LongTables;
import pondtally.reports.table.TablePackage;
import pondtally.table.ResultPackage;

/** {@code pondtally report}: from a program folder to tables, charts, page, workbook, fix list. */
@Command(
    name = "report",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionText.class,
    sortOptions = false,
    header = {"Writes the annual report of a program folder.", ""},
    footer = {
      "",
      "Examples:",
      "  pondtally report my-program --out report-2025",
      "  pondtally report my-program --out report-fy25 --from 2024-07-01 --to 2025-06-30",
      "  pondtally report my-program --out report-2025 --replace"
    })
final class ReportCommand implements Callable<Integer> {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "The program folder with the partners' files.")
  private Path folder;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder to write; it appears whole or not at all.")
  private Path out;

  @Option(names = "--replace", description = "Overwrite DIR if it holds an earlier report.")
  private boolean replace;

  @Option(
      names = "--from",
      paramLabel = "DATE",
      description = "First day of the reporting period, instead of program.yaml's.")
  private LocalDate from;

  @Option(
      names = "--to",
      paramLabel = "DATE",
      description = "Last day of the reporting period, instead of program.yaml's.")
  private LocalDate to;

  @Option(
      names = "--contributions",
      description =
          "Write the row-by-row table that `trace` reads, however many devices there are (without this option: up to 100,000).")
  private boolean contributions;

  @Option(names = "--tables-only", description = "Write tables/ and run.json, no reports.")
  private boolean tablesOnly;

  @CommandLine.Mixin private Machine machine;

  @Override
  public Integer call() throws IOException {
    if (!Launcher.isHere()) {
      return Launcher.relaunch(
          spec.commandLine().getParent().getParseResult().originalArgs(),
          folder,
          machine,
          tablesOnly ? ClassArchive.Extent.PART : ClassArchive.Extent.WHOLE);
    }
    PrintWriter print = spec.commandLine().getOut();
    RunClock clock = new RunClock();
    try (OutputFolder output = OutputFolder.prepare(out, replace)) {
      Path tablesFolder = Files.createDirectory(output.path().resolve("tables"));
      LongTables longTables = new LongTables(tablesFolder, contributions);
      JobResult result = clock.time("job", () -> Job.run(request().with(longTables)));
      Optional<TablePackage> tables = write(output.path(), result, clock);
      output.commit();
      Summary.print(print, result, tables, out, clock);
    } catch (IOException e) {
      throw OutputFolder.notWritable(out, e);
    }
    return Main.DONE;
  }

  private JobRequest request() {
    return new JobRequest(
        folder, (int) LocalDate.now().toEpochDay(), day(from), day(to), machine.cores());
  }

  private static OptionalInt day(LocalDate date) {
    return Optional.ofNullable(date)
        .map(d -> OptionalInt.of((int) d.toEpochDay()))
        .orElse(OptionalInt.empty());
  }

  private Optional<TablePackage> write(Path folder, JobResult result, RunClock clock)
      throws IOException {
    Path tables = folder.resolve("tables");
    ResultPackage.write(tables, result.tables(), result.longTables(), result.facts());
    Optional<TablePackage> opened = Optional.empty();
    if (!tablesOnly) {
      opened = Optional.of(TablePackage.open(tables));
      Rendering.write(opened.get(), folder, clock);
    }
    RunRecord.write(folder.resolve("run.json"), result, clock);
    return opened;
  }
}
