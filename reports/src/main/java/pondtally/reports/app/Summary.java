package pondtally.reports.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pondtally.app.JobResult;
import pondtally.check.RowAccount;
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
    long read = 0;
    long used = 0;
    long changed = 0;
    long setAside = 0;
    long duplicate = 0;
    for (RowAccount row : account) {
      read += row.counts().read();
      used += row.counts().used();
      changed += row.counts().changed();
      setAside += row.counts().setAside();
      duplicate += row.counts().duplicate();
    }
    out.printf(
        Locale.ROOT,
        "%,d rows read = %,d used + %,d used with a change + %,d set aside + %,d duplicate.%n",
        read,
        used,
        changed,
        setAside,
        duplicate);
  }
}
