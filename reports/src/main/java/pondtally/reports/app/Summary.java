package pondtally.reports.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pondtally.app.JobResult;
import pondtally.check.RowAccount;
import pondtally.check.RowCounts;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Section;

/** The short summary that a run prints at its end. */
final class Summary {

  private Summary() {}

  private static final int WIDTH = 96;

  /**
   * The first sentence of each section of the reports' summary, the row account, and where the rest
   * is.
   */
  static void print(
      PrintWriter out,
      JobResult result,
      Optional<TablePackage> tables,
      Path folder,
      RunClock clock) {
    if (tables.isPresent()) {
      printSentences(out, tables.get());
    } else {
      printAccount(out, result.account());
    }
    out.printf(Locale.ROOT, "Written to %s in %.1f seconds.%n", folder, clock.seconds());
  }

  private static void printSentences(PrintWriter out, TablePackage tables) {
    out.println(pondtally.reports.view.Summary.title(tables));
    out.println();
    for (Section section : pondtally.reports.view.Summary.of(tables)) {
      if (!section.sentences().isEmpty()) {
        out.println(wrapped(section.sentences().get(0).text()));
      }
    }
    out.println();
  }

  static String wrapped(String text) {
    StringBuilder lines = new StringBuilder("- ");
    int column = 2;
    for (String word : text.trim().split(" ")) {
      if (column + word.length() > WIDTH) {
        lines.append(System.lineSeparator()).append("  ");
        column = 2;
      }
      lines.append(word).append(' ');
      column += word.length() + 1;
    }
    return lines.toString().stripTrailing();
  }

  static void printAccount(PrintWriter out, List<RowAccount> account) {
    RowCounts total =
        account.stream()
            .map(RowAccount::counts)
            .reduce(new RowCounts(0, 0, 0, 0, 0), RowCounts::plus);
    out.printf(
        Locale.ROOT,
        "%,d %s read = %,d used + %,d used with a change + %,d set aside + %,d duplicate.%n",
        total.read(),
        total.read() == 1 ? "row" : "rows",
        total.used(),
        total.changed(),
        total.setAside(),
        total.duplicate());
  }
}
