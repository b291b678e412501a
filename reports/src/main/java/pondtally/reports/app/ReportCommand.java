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
import pondtally.analysis.Scope;
import pondtally.app.Job;
import pondtally.app.JobRequest;
import pondtally.app.JobResult;
import pondtally.app.LongTables;
import pondtally.check.UserError;
import pondtally.reports.edition.EditionKey;
import pondtally.reports.table.TablePackage;
import pondtally.stage.Progress;
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
      "  pondtally report my-program --out report-2025 --replace",
      "  pondtally report my-program --out public-2025 --public --key ../pondtally.key",
      "  pondtally report my-program --out report-2025 --publish 2025",
      "  pondtally report my-program --out trust-2025 --funder \"Wetland Trust\""
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
      names = "--funder",
      paramLabel = "F",
      description = "Only devices with cash from this funder, for its grant attachment.")
  private String funder;

  @Option(
      names = "--watershed",
      paramLabel = "W",
      description = "Only this watershed: a hydrologic unit code, or the beginning of one.")
  private String watershed;

  @Option(
      names = "--publish",
      paramLabel = "YEAR",
      description = {
        "Keep the tables of this report in FOLDER/published/YEAR: later reports say which of these",
        "figures were restated, and why. Kept once; remove that folder yourself to publish anew."
      })
  private Integer publish;

  @Option(
      names = "--contributions",
      description =
          "Write the row-by-row table that `trace` reads, however many devices there are (without this option: up to 100,000).")
  private boolean contributions;

  @Option(
      names = "--public",
      description = {
        "The public edition: no names, no places finer than 0.1 degree, no figures of groups",
        "with fewer sites than `groups_below`, nor what would give them away."
      })
  private boolean isPublic;

  @Option(
      names = "--key",
      paramLabel = "FILE",
      description = {
        "With --public: the key that replaces names of sites and devices, the same each year.",
        "A file that is not there is made. Without it: a key for this run alone."
      })
  private Path key;

  private EditionKey editionKey;

  @Option(names = "--tables-only", description = "Write tables/ and run.json, no reports.")
  private boolean tablesOnly;

  @CommandLine.Mixin private Machine machine;

  @Override
  public Integer call() {
    if (!Launcher.isHere()) {
      return Launcher.relaunch(
          spec.commandLine().getParent().getParseResult().originalArgs(),
          folder,
          machine,
          tablesOnly ? ClassArchive.Extent.PART : ClassArchive.Extent.WHOLE);
    }
    requireOutside();
    checkPublic();
    PrintWriter print = spec.commandLine().getOut();
    RunClock clock = new RunClock();
    requireToPublish();
    ProgressLine progress = ProgressLine.start();
    try (OutputFolder output = OutputFolder.prepare(out, replace)) {
      Made made = output.fill(folder -> make(folder, clock));
      if (publish != null) {
        Published.keep(folder, publish, out);
      }
      progress.close();
      Summary.print(print, made.result(), made.tables(), out, clock);
      if (isPublic) {
        print.println(PublicReport.keyNote(key));
      }
    } finally {
      progress.close();
    }
    return Main.DONE;
  }

  private record Made(JobResult result, Optional<TablePackage> tables) {}

  private Made make(Path folder, RunClock clock) throws IOException {
    LongTables longTables =
        new LongTables(Files.createDirectory(folder.resolve("tables")), contributions);
    JobResult result =
        clock.time("job", () -> Job.run(isPublic ? request() : request().with(longTables)));
    Progress.now(Progress.Step.WRITING);
    return new Made(result, write(folder, result, clock));
  }

  private void requireOutside() {
    if (RealPlace.of(out).startsWith(RealPlace.of(folder))) {
      throw UserError.usage(
          "--out %s lies in the program folder, where the next run would read the report as records. Give the name of a folder elsewhere."
              .formatted(out));
    }
  }

  private void checkPublic() {
    if (key != null && !isPublic) {
      throw UserError.usage("--key goes with --public. Add it, or leave --key out.");
    }
    if (isPublic && (contributions || publish != null)) {
      throw UserError.usage(
          "--contributions and --publish keep private rows and do not go with --public.");
    }
    if (isPublic && !isWholeProgram()) {
      throw UserError.usage(
          "--public is made for the whole program: two public editions, of all and of a part, would give withheld figures away by subtraction. Leave out --funder and --watershed.");
    }
    if (isPublic) {
      editionKey = PublicReport.key(key, out);
    }
  }

  private boolean isWholeProgram() {
    return funder == null && watershed == null;
  }

  private void requireToPublish() {
    if (publish != null) {
      if (!isWholeProgram()) {
        throw UserError.usage(
            "--publish keeps the figures of the whole program. Leave out --funder and --watershed.");
      }
      Published.requireNew(folder, publish);
    }
  }

  private JobRequest request() {
    return new JobRequest(
            folder, (int) LocalDate.now().toEpochDay(), day(from), day(to), machine.cores())
        .about(new Scope(funder, watershed));
  }

  private static OptionalInt day(LocalDate date) {
    return Optional.ofNullable(date)
        .map(d -> OptionalInt.of((int) d.toEpochDay()))
        .orElse(OptionalInt.empty());
  }

  private Optional<TablePackage> write(Path folder, JobResult result, RunClock clock)
      throws IOException {
    Path tables = folder.resolve("tables");
    if (isPublic) {
      return Optional.of(writePublic(folder, result, clock));
    }
    ResultPackage.write(tables, result.tables(), result.longTables(), result.facts());
    if (isWholeProgram()) {
      clock.timed("published years", () -> Published.restate(this.folder, tables, result));
    }
    Optional<TablePackage> opened = Optional.empty();
    String missing = "";
    if (!tablesOnly) {
      opened = Optional.of(TablePackage.open(tables));
      missing = Rendering.write(opened.get(), folder, clock);
    }
    RunRecord.write(folder.resolve("run.json"), result, clock, missing);
    return opened;
  }

  private TablePackage writePublic(Path folder, JobResult result, RunClock clock)
      throws IOException {
    TablePackage tables = PublicReport.write(folder.resolve("tables"), result, editionKey);
    String missing = tablesOnly ? "" : Rendering.writePublic(tables, folder, clock);
    RunRecord.write(folder.resolve("run.json"), tables, clock, missing);
    return tables;
  }
}
