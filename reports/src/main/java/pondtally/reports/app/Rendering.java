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
import pondtally.reports.chart.MissingLetters;
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

  /** Letters that a message names. */
  private static final int MOST = 20;

  private Rendering() {}

  /**
   * Reports of the full edition, with a fix list for each partner; of a public edition's tables,
   * which name no partner, the public reports.
   *
   * @return the letters of names that no font of this machine has
   */
  static String write(TablePackage tables, Path folder, RunClock clock) throws IOException {
    String missing = writePublic(tables, folder, clock);
    if (tables.table("row_account").filter(account -> account.has("partner")).isEmpty()) {
      return missing;
    }
    ReturnMarks marks = new ReturnMarks(FixMarks.FIX_LIST, InputForms.all());
    clock.timed("fix list", () -> FixList.write(tables, marks, folder.resolve("fix-list.xlsx")));
    return missing;
  }

  /** Reports that may be shown to anybody when the tables may. */
  static String writePublic(TablePackage tables, Path folder, RunClock clock) throws IOException {
    Path charts = Files.createDirectory(folder.resolve("charts"));
    List<ChartFile> drawn = new ArrayList<>();
    clock.timed("charts", () -> drawn.addAll(ChartSet.write(tables, charts)));
    String missing = MissingLetters.of(tables);
    if (!missing.isEmpty()) {
      System.err.println(missingLetters(missing));
    }
    clock.timed(
        "page", () -> ReportPage.write(tables, charts, drawn, folder.resolve("report.html")));
    clock.timed("workbook", () -> ProgramWorkbook.write(tables, folder.resolve("program.xlsx")));
    clock.timed(
        "document", () -> GrantDocument.write(tables, charts, drawn, folder.resolve("grant.docx")));
    Optional<Table> sites = tables.table("sites");
    if (sites.isPresent()) {
      SitesGeoJson.write(sites.get(), folder.resolve("sites.geojson"));
    }
    return missing;
  }

  /** What to do about boxes in pictures. */
  static String missingLetters(String missing) {
    int letters = missing.codePointCount(0, missing.length());
    String some = missing.substring(0, missing.offsetByCodePoints(0, Math.min(MOST, letters)));
    return "pondtally: no font of this machine has %s in names: %s%s. In PNG charts, which grant.docx shows, a box stands for each; text, SVG charts, report.html and program.xlsx show them where the reader has a font. Install a font for that script, such as a Noto Sans of its language, and run render again."
        .formatted(
            letters == 1 ? "this letter" : "these %s letters".formatted(letters),
            some,
            letters > MOST ? " \u2026" : "");
  }
}
