package pondtally.reports.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import pondtally.app.JobResult;
import pondtally.check.RowAccount;

/** The short summary that a run prints at its end. */
final class Summary {

  private Summary() {}

  static void print(PrintWriter out, JobResult result, Path folder, RunClock clock) {
    printAccount(out, result.account());
    out.printf(Locale.ROOT, "%nWritten to %s in %.1f seconds.%n", folder, clock.seconds());
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
