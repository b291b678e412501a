package pondtally.reports.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
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
import pondtally.work.Together;

/** Every report that is made from result tables alone. */
final class Rendering {

  /** Letters that a message names. */
  private static final int MOST = 20;

  private static final int MOST_ROWS = 200_000;

  private Rendering() {}

  /**
   * Reports of the full edition, with a fix list for each partner; of a public edition's tables,
   * which name no partner, the public reports.
   *
   * @return the letters of names that no font of this machine has
   */
  static String write(TablePackage tables, Path folder, RunClock clock) throws IOException {
    if (tables.table("row_account").filter(account -> account.has("partner")).isEmpty()) {
      return writePublic(tables, folder, clock);
    }
    ReturnMarks marks = new ReturnMarks(FixMarks.FIX_LIST, InputForms.all());
    return write(
        tables,
        folder,
        clock,
        () -> {
          writeWorkbook(tables, folder, clock);
          clock.timed(
              "fix list", () -> FixList.write(tables, marks, folder.resolve("fix-list.xlsx")));
        });
  }

  /** Reports that may be shown to anybody when the tables may. */
  static String writePublic(TablePackage tables, Path folder, RunClock clock) throws IOException {
    return write(tables, folder, clock, () -> writeWorkbook(tables, folder, clock));
  }

  private static void writeWorkbook(TablePackage tables, Path folder, RunClock clock)
      throws IOException {
    clock.timed("workbook", () -> ProgramWorkbook.write(tables, folder.resolve("program.xlsx")));
  }

  /** Workbooks, and beside them what has charts in it. */
  private static String write(
      TablePackage tables, Path folder, RunClock clock, RunClock.Part workbooks)
      throws IOException {
    List<Supplier<List<String>>> work =
        List.of(
            () -> List.of(unchecked(() -> writeCharted(tables, folder, clock))),
            () ->
                unchecked(
                    () -> {
                      workbooks.run();
                      return List.of();
                    }));
    try {
      return Together.run(threads(tables), work).get(0);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** Reports of very many rows have the memory to themselves. */
  private static int threads(TablePackage tables) {
    return tables.tables().stream().mapToInt(table -> table.rows().size()).sum() <= MOST_ROWS
        ? 2
        : 1;
  }

  private interface Part<T> {
    T run() throws IOException;
  }

  private static <T> T unchecked(Part<T> part) {
    try {
      return part.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Charts, and what shows them. */
  private static String writeCharted(TablePackage tables, Path folder, RunClock clock)
      throws IOException {
    Path charts = Files.createDirectory(folder.resolve("charts"));
    List<ChartFile> drawn = new ArrayList<>();
    clock.timed("charts", () -> drawn.addAll(ChartSet.write(tables, charts)));
    String missing = MissingLetters.of(tables);
    if (!missing.isEmpty()) {
      System.err.println(missingLetters(missing));
    }
    clock.timed(
        "page", () -> ReportPage.write(tables, charts, drawn, folder.resolve("report.html")));
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
