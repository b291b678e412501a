package pondtally.intake;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import pondtally.check.Finding;
import pondtally.check.RowCounts;
import pondtally.check.SheetReport;
import pondtally.record.Sourced;

/** What reading one file gave, for tests. */
record Read(List<SheetReport> reports, List<Sourced> records) {

  static final IntakeSettings SETTINGS = IntakeSettings.on(LocalDate.of(2025, 12, 31));

  static Read text(Path folder, String name, String content) throws IOException {
    return bytes(folder, name, content.getBytes(StandardCharsets.UTF_8));
  }

  static Read bytes(Path folder, String name, byte[] content) throws IOException {
    Path file = folder.resolve(name);
    Files.write(file, content);
    return file(file);
  }

  static Read file(Path file) {
    List<Sourced> records = new ArrayList<>();
    List<SheetReport> reports = PartnerFileReader.read(input(file), SETTINGS, records::add);
    return new Read(reports, records);
  }

  static InputFile input(Path file) {
    return new InputFile(7, "north/" + file.getFileName(), file.toString(), "north");
  }

  SheetReport report() {
    if (reports.size() != 1) {
      throw new AssertionError("expected one report: " + reports);
    }
    return reports.get(0);
  }

  <T extends Sourced> T only(Class<T> type) {
    if (records.size() != 1) {
      throw new AssertionError("expected one record: " + records + findings());
    }
    return type.cast(records.get(0));
  }

  /** Read, used, changed, set aside. */
  String counts() {
    RowCounts counts = report().counts();
    return "%d=%d+%d+%d"
        .formatted(counts.read(), counts.used(), counts.changed(), counts.setAside());
  }

  /** Each finding as "row field severity rule: message -> suggestion". */
  List<String> findings() {
    return reports.stream().flatMap(report -> report.findings().stream()).map(Read::words).toList();
  }

  private static String words(Finding finding) {
    String place = finding.field() == null ? finding.column() : finding.field();
    String end = finding.suggestion().isEmpty() ? "" : " -> " + finding.suggestion();
    return "%d %s %s %s: %s%s"
        .formatted(
            finding.origin().row(),
            place == null ? "-" : place,
            finding.severity().code(),
            finding.rule(),
            finding.message(),
            end);
  }

  /** The rules by row, as "3 stray-quote". */
  List<String> rules() {
    return reports.stream()
        .flatMap(report -> report.findings().stream())
        .map(finding -> finding.origin().row() + " " + finding.rule())
        .toList();
  }
}
