package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import pondtally.app.JobResult;
import pondtally.check.UserError;
import pondtally.intake.InputFile;
import pondtally.intake.ProgramFolder;
import pondtally.reports.compare.Restated;
import pondtally.reports.table.RunFolder;
import pondtally.reports.table.TablePackage;
import pondtally.table.RecordRows;
import pondtally.table.ResultPackage;
import pondtally.table.ResultTable;
import pondtally.table.Sha256;

/**
 * The figures that were handed out each year. They are kept in {@code published/YEAR} of the
 * program folder, never overwritten and never read as records.
 */
final class Published {

  private Published() {}

  private static Path place(Path program, int year) {
    return program.resolve(ProgramFolder.PUBLISHED).resolve(Integer.toString(year));
  }

  /**
   * @throws UserError when the year is no year, or was published before
   */
  static void requireNew(Path program, int year) {
    if (year < 1000 || year > 9999) {
      throw UserError.usage("--publish %s: expected a year such as 2025.".formatted(year));
    }
    if (Files.exists(place(program, year))) {
      throw UserError.output(
          "%s was published before: %s is there. If those figures were never handed out, remove that folder yourself and run again."
              .formatted(year, place(program, year)));
    }
  }

  /** Keeps the tables and {@code run.json} of a report; the folder appears whole or not at all. */
  static void keep(Path program, int year, Path report) {
    try (OutputFolder kept = OutputFolder.prepare(place(program, year), false)) {
      kept.fill(folder -> copy(report, folder));
    }
  }

  private static Path copy(Path report, Path folder) throws IOException {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    try (Stream<Path> files = Files.list(report.resolve("tables"))) {
      for (Path file : files.sorted().toList()) {
        Files.copy(file, tables.resolve(file.getFileName()));
      }
    }
    return Files.copy(report.resolve("run.json"), folder.resolve("run.json"));
  }

  /** Adds the table {@code restated} to those of a report, when anything was published before. */
  static void restate(Path program, Path tables, JobResult result) throws IOException {
    TreeMap<Integer, Path> years = years(program);
    if (years.isEmpty()) {
      return;
    }
    TreeMap<String, String> inputs = new TreeMap<>();
    for (InputFile file : result.program().files()) {
      if (file.isOpened()) {
        inputs.put(file.path(), Sha256.of(Path.of(file.location())));
      }
    }
    RunFolder today = new RunFolder(TablePackage.open(tables), inputs);
    List<Restated> rows = new ArrayList<>();
    years.forEach((year, folder) -> rows.addAll(Restated.of(year, RunFolder.open(folder), today)));
    List<ResultTable> all = new ArrayList<>(result.tables());
    all.add(RecordRows.table("restated", rows));
    Map<String, String> facts = new TreeMap<>(result.facts());
    facts.put(
        "published_years",
        String.join(", ", years.keySet().stream().map(String::valueOf).toList()));
    ResultPackage.write(tables, all, result.longTables(), facts);
  }

  private static TreeMap<Integer, Path> years(Path program) throws IOException {
    TreeMap<Integer, Path> years = new TreeMap<>();
    Path published = program.resolve(ProgramFolder.PUBLISHED);
    if (Files.isDirectory(published)) {
      try (Stream<Path> folders = Files.list(published)) {
        folders
            .filter(folder -> folder.getFileName().toString().matches("\\d{4}"))
            .filter(folder -> Files.isRegularFile(folder.resolve("run.json")))
            .forEach(folder -> years.put(Integer.valueOf(folder.getFileName().toString()), folder));
      }
    }
    return years;
  }
}
