package pondtally.stage;

import java.util.ArrayList;
import java.util.List;
import org.apache.spark.api.java.JavaSparkContext;
import pondtally.analysis.DeviceRow;
import pondtally.analysis.SiteRow;
import pondtally.check.DataIssue;
import pondtally.check.FileName;
import pondtally.check.Finding;
import pondtally.check.IssueBook;
import pondtally.check.KnownIds;
import pondtally.check.RowAccount;
import pondtally.check.SheetReport;
import pondtally.intake.FixKey;
import pondtally.intake.SourceRow;
import pondtally.intake.UnusedAliases;
import pondtally.table.ResultTable;

/** What was noticed about the partners' rows, as result tables. */
record CheckTables(List<ResultTable> tables, List<RowAccount> account, List<DataIssue> issues) {

  static CheckTables of(JavaSparkContext spark, Inputs inputs, ClusterOutcome outcome) {
    KnownIds known = known(outcome);
    List<Finding> findings = new ArrayList<>(outcome.findings());
    findings.addAll(
        UnusedAliases.among(inputs.aliases(), inputs.files().size(), inputs.reports(), known));
    IssueBook book =
        IssueBook.of(names(inputs), inputs.reports(), findings, outcome.verdicts(), known);
    SourceStage.Wanted wanted = new SourceStage.Wanted();
    wanted.addFindings(outcome.findings());
    wanted.addVerdicts(outcome.verdicts());
    for (SheetReport report : inputs.reports()) {
      wanted.addFindings(report.findings());
    }
    List<SourceRow> sources = SourceStage.rows(spark, inputs.files(), wanted);
    return new CheckTables(
        List.of(
            accountTable(book.accounts()), issueTable(book.issues()), sourceTable(inputs, sources)),
        book.accounts(),
        book.issues());
  }

  /** The files of the partners, and behind them the one that merges ids. */
  private static List<FileName> names(Inputs inputs) {
    List<FileName> names = new ArrayList<>();
    inputs.files().forEach(file -> names.add(new FileName(file.path(), file.partner())));
    names.add(new FileName("aliases.csv", ""));
    return names;
  }

  private static KnownIds known(ClusterOutcome outcome) {
    KnownIds counted =
        new KnownIds(
            outcome.sites().stream().map(SiteRow::siteId).toList(),
            outcome.sites().stream().map(SiteRow::pondId).distinct().toList(),
            outcome.devices().stream().map(DeviceRow::deviceId).toList());
    return outcome.scoping().known(counted);
  }

  private static ResultTable accountTable(List<RowAccount> accounts) {
    ResultTable.Builder table = ResultTable.named("row_account");
    for (RowAccount a : accounts) {
      table.row(
          a.partner(),
          a.file(),
          a.sheet(),
          a.table(),
          a.counts().read(),
          a.counts().used(),
          a.counts().changed(),
          a.counts().setAside(),
          a.counts().duplicate());
    }
    return table.inGivenOrder().build();
  }

  private static ResultTable issueTable(List<DataIssue> issues) {
    ResultTable.Builder table = ResultTable.named("data_issues");
    for (DataIssue i : issues) {
      table.row(
          i.partner(),
          i.file(),
          i.sheet(),
          i.row(),
          i.table(),
          i.column(),
          i.value(),
          i.severity().code(),
          i.rule(),
          i.message(),
          i.suggestion());
    }
    return table.inGivenOrder().build();
  }

  private static ResultTable sourceTable(Inputs inputs, List<SourceRow> sources) {
    ResultTable.Builder table = ResultTable.named("source_rows");
    for (SourceRow source : sources) {
      SheetReport report = report(inputs.reports(), source);
      String path = inputs.files().get(source.file()).path();
      String sheet = report == null ? "" : report.sheetName();
      String key = FixKey.of(path, sheet, source).text();
      for (int i = 0; i < source.cells().size(); i++) {
        table.row(
            inputs.files().get(source.file()).partner(),
            path,
            sheet,
            source.row(),
            i + 1,
            report == null ? "" : report.table(),
            i < source.headings().size() ? source.headings().get(i) : "",
            i < source.fields().size() ? source.fields().get(i) : "",
            source.cells().get(i),
            key);
      }
    }
    return table.inGivenOrder().build();
  }

  private static SheetReport report(List<SheetReport> reports, SourceRow source) {
    for (SheetReport report : reports) {
      if (report.file() == source.file() && report.sheet() == source.sheet()) {
        return report;
      }
    }
    return null;
  }
}
