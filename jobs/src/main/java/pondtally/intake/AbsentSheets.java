package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pondtally.check.Finding;
import pondtally.check.Severity;
import pondtally.check.SheetReport;
import pondtally.record.Origin;

/** Tells of sheets that {@code columns.yaml} names and a workbook has not. */
final class AbsentSheets {

  private AbsentSheets() {}

  /** The report of the first sheet, with a notice for each pattern of sheets that fits none. */
  static SheetReport reported(InputFile file, List<SheetReport> reports) {
    SheetReport first = reports.get(0);
    List<Finding> findings = new ArrayList<>();
    for (ColumnsMap.Entry entry : file.columns().entries()) {
      boolean isMeant =
          entry.files() != null && entry.sheets() != null && entry.fitsFile(file.path());
      if (isMeant && reports.stream().noneMatch(sheet -> entry.fitsSheet(sheet.sheetName()))) {
        findings.add(absent(entry, first, reports));
      }
    }
    findings.addAll(first.findings());
    return new SheetReport(
        first.file(),
        first.sheet(),
        first.sheetName(),
        first.table(),
        first.headings(),
        first.counts(),
        first.newestDay(),
        List.copyOf(findings));
  }

  private static Finding absent(
      ColumnsMap.Entry entry, SheetReport first, List<SheetReport> reports) {
    String there =
        reports.stream()
            .limit(20)
            .map(sheet -> Shown.value(sheet.sheetName()))
            .collect(Collectors.joining(", "));
    return new Finding(
        new Origin(first.file(), first.sheet(), 0, false),
        first.table(),
        null,
        null,
        null,
        Severity.NOTICE,
        IntakeRule.MAPPED_HEADING_ABSENT.code(),
        message(entry, first, there),
        "");
  }

  private static String message(ColumnsMap.Entry entry, SheetReport first, String there) {
    String about =
        "columns.yaml, line %s, is about sheets called %s, "
            .formatted(entry.line(), Shown.value(entry.sheets()));
    return about
        + (first.sheetName().isEmpty()
            ? "and this file is no workbook, so the entry does not count for it. Take `sheets` out."
            : "and this file has none. Its sheets: %s.".formatted(there));
  }
}
