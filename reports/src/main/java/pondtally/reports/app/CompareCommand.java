package pondtally.reports.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pondtally.app.Version;
import pondtally.reports.compare.Comparison;
import pondtally.reports.page.ChangesPage;
import pondtally.reports.table.RunFolder;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.ChangeSentences;
import pondtally.reports.view.Section;
import pondtally.reports.workbook.ChangesWorkbook;
import pondtally.table.RecordRows;
import pondtally.table.ResultPackage;
import pondtally.table.ResultTable;

/** {@code pondtally compare}: what changed between two runs, by how much, and from what. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionText.class,
    sortOptions = false,
    header = {"Says which figures moved between two runs, by how much, and from what.", ""},
    footer = {
      "",
      "Examples:",
      "  pondtally compare report-2024 report-2025 --out what-changed",
      "  pondtally compare my-program/published/2024 report-2025 --out restated"
    })
final class CompareCommand implements Callable<Integer> {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "OUT_A",
      description = "The folder of the earlier run, or its tables/ folder.")
  private Path earlier;

  @Parameters(
      index = "1",
      paramLabel = "OUT_B",
      description = "The folder of the later run, or its tables/ folder.")
  private Path later;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder to write; it appears whole or not at all.")
  private Path out;

  @Option(names = "--replace", description = "Overwrite DIR if it holds an earlier report.")
  private boolean replace;

  @Override
  public Integer call() {
    if (!Launcher.isHere()) {
      return Launcher.relaunch(
          spec.commandLine().getParent().getParseResult().originalArgs(),
          later,
          Machine.any(),
          ClassArchive.Extent.PART);
    }
    RunClock clock = new RunClock();
    RunFolder before = RunFolder.open(earlier);
    RunFolder after = RunFolder.open(later);
    Comparison comparison = clock.time("compare", () -> Comparison.of(before, after));
    try (OutputFolder output = OutputFolder.prepare(out, replace)) {
      print(
          output.fill(
              folder -> write(folder, comparison, facts(before, after, comparison), clock)));
    }
    return Main.DONE;
  }

  private static TablePackage write(
      Path folder, Comparison comparison, Map<String, String> facts, RunClock clock)
      throws IOException {
    TablePackage tables = writeTables(folder, comparison, facts);
    clock.timed("page", () -> ChangesPage.write(tables, folder.resolve("changes.html")));
    clock.timed("workbook", () -> ChangesWorkbook.write(tables, folder.resolve("changes.xlsx")));
    RunRecord.write(folder.resolve("run.json"), tables, clock);
    return tables;
  }

  private static TablePackage writeTables(
      Path folder, Comparison comparison, Map<String, String> facts) throws IOException {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    List<ResultTable> rows =
        List.of(
            RecordRows.table("changes", comparison.figures()),
            RecordRows.table("changed_settings", comparison.settings()),
            RecordRows.table("changed_files", comparison.files()),
            RecordRows.table("changed_rows", comparison.rows()),
            RecordRows.table("changed_records", comparison.records()));
    ResultPackage.write(tables, rows, facts);
    return TablePackage.open(tables);
  }

  private static Map<String, String> facts(
      RunFolder before, RunFolder after, Comparison comparison) {
    Map<String, String> facts = new TreeMap<>();
    facts.put("region", after.tables().fact("region"));
    facts.put("before_as_of", before.tables().fact("as_of"));
    facts.put("as_of", after.tables().fact("as_of"));
    facts.put("before_base_year", before.tables().fact("base_year"));
    facts.put("base_year", after.tables().fact("base_year"));
    facts.put("before_version", before.tables().fact("version"));
    facts.put("after_version", after.tables().fact("version"));
    facts.put("version", Version.text());
    facts.put("compared", Integer.toString(comparison.compared()));
    boolean filesKnown = !before.inputs().isEmpty() && !after.inputs().isEmpty();
    facts.put("files_known", Boolean.toString(filesKnown));
    return facts;
  }

  private void print(TablePackage tables) {
    PrintWriter lines = spec.commandLine().getOut();
    lines.println(ChangeSentences.title(tables));
    lines.println();
    for (Section section : ChangeSentences.of(tables)) {
      section.sentences().forEach(sentence -> lines.println(Summary.wrapped(sentence.text())));
    }
    lines.println();
    lines.println("Written to " + out + ".");
    lines.flush();
  }
}
