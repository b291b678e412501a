package pondtally.sample;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Writes, for tests, what is true of the sample: each planted fault, the fate of rows, the lives as
 * drawn.
 */
final class FactFiles {
  private final SampleProgram program;

  FactFiles(SampleProgram program) {
    this.program = program;
  }

  void write(Path folder) {
    CsvFile.write(
        folder.resolve("planted-faults.csv"),
        List.of("partner", "file", "sheet", "row", "table", "column", "value", "kind", "outcome"),
        faults().stream().map(FactFiles::line).toList());
    CsvFile.write(folder.resolve("row-account.csv"), RowAccount.HEADINGS, account());
    CsvFile.write(
        folder.resolve("true-lives.csv"),
        List.of(
            "device_id",
            "life",
            "pipe",
            "watershed",
            "to_specification",
            "hazard",
            "installed_on",
            "entry_on",
            "life_from",
            "failure_age_days",
            "cause"),
        lives());
  }

  /** The faults by place: file, sheet, row, column. */
  List<Planted> faults() {
    Comparator<Planted> order = Comparator.comparing(fault -> fault.sheet().file());
    return program.planted().stream()
        .sorted(
            order
                .thenComparing(fault -> fault.sheet().name())
                .thenComparing(fault -> fault.row() == null ? 0 : fault.sheet().number(fault.row()))
                .thenComparing(Planted::heading)
                .thenComparing(Planted::kind))
        .toList();
  }

  private static List<String> line(Planted fault) {
    Sheet sheet = fault.sheet();
    return List.of(
        sheet.partner().folder,
        sheet.file(),
        sheet.name(),
        fault.rowNumber(),
        sheet.table().code(),
        fault.heading(),
        fault.value(),
        fault.kind().code(),
        fault.outcome().code());
  }

  private List<List<String>> account() {
    return program.sheets().stream()
        .filter(sheet -> sheet.table() != Table.NONE)
        .map(RowAccount::of)
        .sorted(Comparator.comparing(RowAccount::file).thenComparing(RowAccount::sheet))
        .map(RowAccount::line)
        .toList();
  }

  private List<List<String>> lives() {
    List<List<String>> lines = new ArrayList<>();
    for (History history : program.world().histories()) {
      history.lives().forEach(life -> lines.add(line(history.device(), life)));
    }
    return lines;
  }

  private static List<String> line(Device device, History.Life life) {
    LocalDate entry = life.number() == 1 ? device.entry() : life.startedOn();
    return List.of(
        device.id(),
        String.valueOf(life.number()),
        life.pipe().name().toLowerCase(Locale.ROOT).replace('_', ' '),
        device.site().watershed().code(),
        device.toSpecification() ? "yes" : "no",
        String.valueOf(device.hazard()),
        device.installedOn().toString(),
        entry.toString(),
        life.startedOn().toString(),
        String.format(Locale.ROOT, "%.1f", life.failureAgeDays()),
        life.cause());
  }
}
