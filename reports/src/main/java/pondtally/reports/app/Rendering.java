package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pondtally.intake.FixMarks;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.chart.ChartSet;
import pondtally.reports.document.GrantDocument;
import pondtally.reports.fixlist.FixList;
import pondtally.reports.fixlist.ReturnMarks;
import pondtally.reports.geojson.SitesGeoJson;
import pondtally.reports.page.ReportPage;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.workbook.ProgramWorkbook;

/** Every report that is made from result tables alone. */
final class Rendering {

  private Rendering() {}

  /**
   * Reports of the full edition, with a fix list for each partner; of a public edition's tables,
   * which name no partner, the public reports.
   */
  static void write(TablePackage tables, Path folder, RunClock clock) throws IOException {
    writePublic(tables, folder, clock);
    if (tables.table("row_account").filter(account -> account.has("partner")).isEmpty()) {
      return;
    }
    ReturnMarks marks = new ReturnMarks(FixMarks.FIX_LIST, InputForms.all());
    clock.timed("fix list", () -> FixList.write(tables, marks, folder.resolve("fix-list.xlsx")));
  }

  /** Reports that may be shown to anybody when the tables may. */
  static void writePublic(TablePackage tables, Path folder, RunClock clock) throws IOException {
    Path charts = Files.createDirectory(folder.resolve("charts"));
    List<ChartFile> drawn = new ArrayList<>();
    clock.timed("charts", () -> drawn.addAll(ChartSet.write(tables, charts)));
    clock.timed(
        "page", () -> ReportPage.write(tables, charts, drawn, folder.resolve("report.html")));
    clock.timed("workbook", () -> ProgramWorkbook.write(tables, folder.resolve("program.xlsx")));
    clock.timed(
        "document", () -> GrantDocument.write(tables, charts, drawn, folder.resolve("grant.docx")));
    Optional<Table> sites = tables.table("sites");
    if (sites.isPresent()) {
      SitesGeoJson.write(sites.get(), folder.resolve("sites.geojson"));
    }
  }
}
