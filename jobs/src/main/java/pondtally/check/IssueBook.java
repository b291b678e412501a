package pondtally.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All that was noticed, in words and in file order, and where every row ended: the tables {@code
 * data_issues} and {@code row_account}.
 */
public final class IssueBook {

  private static final Comparator<DataIssue> WITHIN_ROW =
      Comparator.comparing(DataIssue::column)
          .thenComparing(DataIssue::rule)
          .thenComparing(DataIssue::message)
          .thenComparing(DataIssue::value)
          .thenComparing(DataIssue::severity)
          .thenComparing(DataIssue::suggestion);

  private final List<DataIssue> issues;
  private final List<RowAccount> accounts;

  private IssueBook(List<DataIssue> issues, List<RowAccount> accounts) {
    this.issues = issues;
    this.accounts = accounts;
  }

  /**
   * @param files the input files, at their index
   * @param reports what reading each sheet found, in any order
   * @param findings of the checks across rows, in any order
   * @param verdicts of the checks across rows, in any order; several for a row count as one
   * @param known ids to look for the nearest one to an unknown id
   * @throws IllegalStateException where verdicts and reports do not fit each other: a fault of the
   *     program
   */
  public static IssueBook of(
      List<FileName> files,
      List<SheetReport> reports,
      List<Finding> findings,
      List<Verdict> verdicts,
      KnownIds known) {
    Sheets sheets = new Sheets(files, reports);
    List<Finding> all = new ArrayList<>();
    findings.forEach(finding -> all.add(withRowsNamed(sheets, finding)));
    reports.forEach(report -> all.addAll(report.findings()));
    List<RowAccount> accounts = accounts(sheets, new RowLedger(verdicts), all);
    return new IssueBook(issues(sheets, all, new Suggestions(all, known)), accounts);
  }

  /** In file order, then by row (whole sheets first), then by column. */
  public List<DataIssue> issues() {
    return issues;
  }

  /** In file order, one a sheet. */
  public List<RowAccount> accounts() {
    return accounts;
  }

  /** The accounts; a sheet of which much was set aside gets a finding of its own. */
  private static List<RowAccount> accounts(Sheets sheets, RowLedger ledger, List<Finding> all) {
    sheets.requireAll(ledger.sheets());
    Shares shares = new Shares(all);
    List<RowAccount> accounts = new ArrayList<>();
    for (SheetReport report : sheets.inOrder()) {
      RowCounts counts = ledger.after(SheetPlace.of(report), report.counts());
      shares.notice(report, counts).ifPresent(all::add);
      FileName file = sheets.file(report.file());
      accounts.add(
          new RowAccount(
              file.partner(), file.path(), report.sheetName(), orEmpty(report.table()), counts));
    }
    return List.copyOf(accounts);
  }

  private static List<DataIssue> issues(
      Sheets sheets, List<Finding> findings, Suggestions suggestions) {
    record Placed(Finding finding, DataIssue issue) {}
    LeftOutValue leftOut = new LeftOutValue(findings);
    return findings.stream()
        .map(f -> new Placed(f, issue(sheets, f, leftOut.message(f), suggestions.of(f))))
        .sorted(
            Comparator.comparing((Placed p) -> p.finding().origin())
                .thenComparing(Placed::issue, WITHIN_ROW))
        .map(Placed::issue)
        .toList();
  }

  private static DataIssue issue(
      Sheets sheets, Finding finding, String message, String suggestion) {
    FileName file = sheets.file(finding.origin().file());
    return new DataIssue(
        file.partner(),
        file.path(),
        sheets.sheetName(finding.origin()),
        finding.origin().row() == 0 ? null : finding.origin().row(),
        orEmpty(finding.table()),
        column(sheets, finding),
        orEmpty(finding.value()),
        finding.severity(),
        finding.rule(),
        message,
        suggestion);
  }

  private static Finding withRowsNamed(Sheets sheets, Finding finding) {
    String message =
        Placeholders.expand(finding.message(), row -> sheets.rowName(row, finding.origin()));
    return new Finding(
        finding.origin(),
        finding.table(),
        finding.field(),
        finding.column(),
        finding.value(),
        finding.severity(),
        finding.rule(),
        message,
        finding.suggestion());
  }

  private static String column(Sheets sheets, Finding finding) {
    String heading = sheets.heading(finding.origin(), finding.field());
    if (heading != null) {
      return heading;
    }
    return finding.column() != null ? finding.column() : orEmpty(finding.field());
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text;
  }
}
