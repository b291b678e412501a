package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pondtally.check.Finding;
import pondtally.check.RowCounts;
import pondtally.check.Severity;
import pondtally.check.SheetReport;
import pondtally.record.Origin;

/** Says what became of lists of corrected rows, and of the corrections in them. */
final class FixReports {

  private FixReports() {}

  /** The report on a file that is such a list itself: it has no rows of its own. */
  static SheetReport ofList(InputFile file) {
    FixShare.Listed list = file.fixes().list();
    Origin origin = new Origin(file.index(), 0, 0, false);
    List<Finding> findings = new ArrayList<>();
    findings.add(
        finding(
            origin,
            null,
            IntakeRule.FIX_LIST,
            "This is a list of rows to correct and holds no records of its own. %s changed in it, %s left as they were."
                .formatted(were(list.changed()), list.untouched())));
    for (String refused : list.refused()) {
      findings.add(finding(origin, null, IntakeRule.MEND_REFUSED, refused));
    }
    RowCounts none = new RowCounts(0, 0, 0, 0, 0);
    return new SheetReport(file.index(), 0, "", null, Map.of(), none, null, findings);
  }

  private static String were(int rows) {
    return rows == 1 ? "1 row was" : rows + " rows were";
  }

  /** The report on a sheet with the corrections that were refused. */
  static SheetReport withRefused(SheetReport report, SheetSource source) {
    if (!(source instanceof MendedSheet mended) || mended.refused().isEmpty()) {
      return report;
    }
    List<Finding> findings = new ArrayList<>(report.findings());
    mended
        .refused()
        .forEach(
            (fix, why) -> {
              Origin origin = new Origin(report.file(), report.sheet(), fix.key().row(), false);
              findings.add(refused(origin, report.table(), fix, why));
            });
    findings.sort((a, b) -> a.origin().compareTo(b.origin()));
    return with(report, findings);
  }

  /** The last report of a file with the corrections of sheets that it has not. */
  static void addMissingSheets(InputFile file, Set<String> sheets, List<SheetReport> reports) {
    List<FixRow> lost =
        file.fixes().rows().stream().filter(fix -> !sheets.contains(fix.key().sheet())).toList();
    if (lost.isEmpty() || reports.isEmpty()) {
      return;
    }
    SheetReport last = reports.get(reports.size() - 1);
    Origin origin = new Origin(last.file(), last.sheet(), 0, false);
    List<Finding> findings = new ArrayList<>();
    for (FixRow fix : lost) {
      findings.add(refused(origin, null, fix, "the file has no such sheet any more"));
    }
    findings.addAll(last.findings());
    reports.set(reports.size() - 1, with(last, findings));
  }

  private static Finding refused(Origin origin, String table, FixRow fix, String why) {
    return finding(
        origin,
        table,
        IntakeRule.MEND_REFUSED,
        "The correction of %s in %s is not used: %s. The row counts as it stands here. Correct it here, or in the list that comes with the next report."
            .formatted(fix.key().words(), fix.where(), why));
  }

  private static Finding finding(Origin origin, String table, IntakeRule rule, String message) {
    return new Finding(origin, table, null, null, null, Severity.NOTICE, rule.code(), message, "");
  }

  private static SheetReport with(SheetReport report, List<Finding> findings) {
    return new SheetReport(
        report.file(),
        report.sheet(),
        report.sheetName(),
        report.table(),
        report.headings(),
        report.counts(),
        report.newestDay(),
        List.copyOf(findings));
  }

  /** Names of the sheets. */
  static Set<String> names(List<SheetSource> sheets) {
    return sheets.stream().map(SheetSource::name).collect(Collectors.toSet());
  }
}
