package pondtally.stage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pondtally.analysis.Contribution;
import pondtally.analysis.ContributionProgram;
import pondtally.check.SheetReport;
import pondtally.intake.InputFile;
import pondtally.table.TableFile;
import pondtally.table.TableFileWriter;

/** The file of the result table {@code contributions}, joined from the runs that tasks wrote. */
final class ContributionFile {

  private static final String NAME = "contributions";
  private static final int LEADING_CELLS = 11;

  private record Place(int file, int sheet) {}

  private final List<InputFile> files;
  private final Map<Place, String> sheets = new HashMap<>();
  private final ContributionProgram program;

  private ContributionFile(Inputs inputs, ContributionProgram program) {
    this.files = inputs.files();
    this.program = program;
    for (SheetReport report : inputs.reports()) {
      sheets.put(new Place(report.file(), report.sheet()), report.sheetName());
    }
  }

  /**
   * Writes the table into {@code tables} and removes the folder of runs.
   *
   * @param runs names of the runs in {@code folder}
   */
  static TableFile write(
      Path tables, Path folder, List<String> runs, Inputs inputs, ContributionProgram program) {
    ContributionFile file = new ContributionFile(inputs, program);
    List<String> all = new ArrayList<>(runs);
    try (TableFileWriter out = TableFileWriter.open(tables, NAME)) {
      try (ContributionRuns own = new ContributionRuns(folder)) {
        program.contributions().forEach(own::add);
        own.close();
        all.addAll(own.runs());
      }
      ContributionRuns.merge(folder, all, row -> out.row(file.cells(row)));
      delete(folder);
      return out.written();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** With what tasks left there whose machine was lost. */
  private static void delete(Path folder) throws IOException {
    try (Stream<Path> runs = Files.list(folder)) {
      for (Path run : runs.toList()) {
        Files.delete(run);
      }
    }
    Files.delete(folder);
  }

  private Object[] cells(Contribution row) {
    InputFile file = files.get(row.origin().file());
    List<String> groups = row.groups().cells();
    Object[] cells = new Object[LEADING_CELLS + groups.size()];
    cells[0] = row.subject().code();
    cells[1] = row.siteId();
    cells[2] = row.deviceId();
    cells[3] = row.amount();
    cells[4] = row.subject().unit();
    cells[5] = file.partner();
    cells[6] = file.path();
    cells[7] = sheets.get(new Place(row.origin().file(), row.origin().sheet()));
    cells[8] = row.origin().row();
    cells[9] = program.year(row);
    cells[10] = row.part();
    for (int i = 0; i < groups.size(); i++) {
      cells[LEADING_CELLS + i] = groups.get(i).isEmpty() ? null : groups.get(i);
    }
    return cells;
  }
}
