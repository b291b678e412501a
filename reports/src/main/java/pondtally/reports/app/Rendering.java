package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import pondtally.intake.FixMarks;
import pondtally.reports.chart.ChartSet;
import pondtally.reports.fixlist.FixList;
import pondtally.reports.fixlist.ReturnMarks;
import pondtally.reports.table.TablePackage;
import pondtally.reports.workbook.ProgramWorkbook;

/** Every report that is made from result tables alone. */
final class Rendering {

  private Rendering() {}

  static void write(TablePackage tables, Path folder, RunClock clock) throws IOException {
    Path charts = Files.createDirectory(folder.resolve("charts"));
    clock.timed("charts", () -> ChartSet.write(tables, charts));
    clock.timed("workbook", () -> ProgramWorkbook.write(tables, folder.resolve("program.xlsx")));
    ReturnMarks marks = new ReturnMarks(FixMarks.FIX_LIST, InputForms.all());
    clock.timed("fix list", () -> FixList.write(tables, marks, folder.resolve("fix-list.xlsx")));
  }
}
