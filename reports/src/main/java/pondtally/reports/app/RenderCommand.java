package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pondtally.reports.table.TablePackage;

/**
 * {@code pondtally render}: reports from a folder of tables; needs neither Spark nor the partners'
 * files.
 */
@Command(
    name = "render",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionText.class,
    sortOptions = false,
    header = {"Makes charts, page, workbook and fix list again from the tables of a run.", ""},
    footer = {"", "Example:", "  pondtally render report-2025/tables --out report-2025-again"})
final class RenderCommand implements Callable<Integer> {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Parameters(paramLabel = "TABLES", description = "The tables/ folder of a run.")
  private Path tables;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder to write.")
  private Path out;

  @Option(names = "--replace", description = "Overwrite DIR if it holds an earlier report.")
  private boolean replace;

  @Override
  public Integer call() {
    if (!Launcher.isHere()) {
      return Launcher.relaunch(
          spec.commandLine().getParent().getParseResult().originalArgs(),
          tables,
          Machine.any(),
          ClassArchive.Extent.PART);
    }
    RunClock clock = new RunClock();
    TablePackage opened = TablePackage.open(tables);
    try (OutputFolder output = OutputFolder.prepare(out, replace)) {
      output.fill(
          folder -> {
            copyTables(folder);
            Rendering.write(opened, folder, clock);
            RunRecord.write(folder.resolve("run.json"), opened, clock);
            return opened;
          });
    }
    spec.commandLine().getOut().printf("Reports made from %s: %s%n", tables, out);
    return Main.DONE;
  }

  private void copyTables(Path folder) throws IOException {
    Path copy = Files.createDirectory(folder.resolve("tables"));
    try (Stream<Path> files = Files.list(tables)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
    }
  }
}
