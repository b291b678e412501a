package pondtally.reports.workbook;

import java.util.List;
import java.util.Map;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.view.Line;

/** The files that the workbook was made from, each with its fingerprint. */
final class ProvenanceSheet {

  /** Hexadecimal digits of a fingerprint, and what the edges of a cell take. */
  private static final int FINGERPRINT = 68;

  private ProvenanceSheet() {}

  static void addTo(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "")
            .add("file", Messages.of("common.File"), Format.TEXT)
            .add("holds", Messages.of("workbook.ProvenanceSheet.what-it-holds"), Format.WRAPPED)
            .width(60)
            .add("sha256", Messages.of("workbook.ProvenanceSheet.sha-256"), Format.TEXT)
            .width(FINGERPRINT);
    book.add(
        TableSheet.of(
            Messages.of("workbook.ProvenanceSheet.provenance"),
            Messages.of("workbook.ProvenanceSheet.where-the-figures-come-from"),
            List.of(
                Messages.of(
                    "workbook.ProvenanceSheet.made-from-these-files",
                    Map.of("version", known(tables, "version"), "asOf", known(tables, "as_of"))),
                Messages.of("workbook.ProvenanceSheet.input-files-stand-in-run-json")),
            columns,
            tables.tables().stream().map(ProvenanceSheet::line).toList()));
  }

  private static String known(TablePackage tables, String fact) {
    return tables.fact(fact).isEmpty() ? Missing.NOT_KNOWN : tables.fact(fact);
  }

  private static Line line(Table table) {
    return Line.of(
        Map.of(
            "file", "tables/" + table.name() + ".csv",
            "holds", table.title(),
            "sha256", table.sha256()));
  }
}
