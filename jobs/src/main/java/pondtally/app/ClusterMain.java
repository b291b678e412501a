package pondtally.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.apache.hadoop.conf.Configuration;
import pondtally.check.RowAccount;
import pondtally.check.UserError;
import pondtally.stage.LocalFile;
import pondtally.table.ResultPackage;

/**
 * The job on an existing cluster, started by {@code spark-submit}: tables from a program folder,
 * both on any Hadoop file system. A laptop renders them.
 */
public final class ClusterMain {

  private static final int FAULT = 70;

  private ClusterMain() {}

  /** Runs the job; exits with the codes of the {@code pondtally} command. */
  public static void main(String[] arguments) {
    System.exit(run(arguments));
  }

  private static int run(String... arguments) {
    try {
      ClusterArguments wanted = ClusterArguments.of(arguments);
      try (Session session = Session.submitted()) {
        run(session, wanted);
      }
      return 0;
    } catch (UserError e) {
      System.err.println("pondtally: " + e.getMessage());
      return e.exitCode();
    } catch (RuntimeException e) {
      System.err.println("pondtally " + Version.text() + ": this is a fault of the program.");
      e.printStackTrace();
      return FAULT;
    }
  }

  private static void run(Session session, ClusterArguments wanted) {
    Configuration settings = LocalFile.settings();
    ClusterOutput output = ClusterOutput.prepare(wanted.out(), wanted.replace(), settings);
    ProgramMirror program = ProgramMirror.open(wanted.folder(), settings, session.scratch());
    try {
      Path tables = Files.createDirectory(session.scratch().resolve("tables"));
      LongTables longTables =
          wanted.shared() == null
              ? LongTables.NONE
              : new LongTables(
                  Files.createTempDirectory(wanted.shared(), "pondtally-"), wanted.contributions());
      JobRequest request =
          new JobRequest(
                  program.folder(),
                  (int) LocalDate.now().toEpochDay(),
                  wanted.from(),
                  wanted.to(),
                  0)
              .with(longTables);
      JobResult result = Job.run(session, request, program::forTasks);
      moveLong(longTables, tables);
      ResultPackage.write(tables, result.tables(), result.longTables(), result.facts());
      output.write(tables, Version.text());
      print(result, wanted.out());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void moveLong(LongTables from, Path tables) throws IOException {
    if (from.folder() == null) {
      return;
    }
    try (var files = Files.list(from.folder())) {
      for (Path file : files.toList()) {
        Files.copy(file, tables.resolve(file.getFileName()));
        Files.delete(file);
      }
    }
    Files.delete(from.folder());
  }

  private static void print(JobResult result, String out) {
    long read = 0;
    long setAside = 0;
    for (RowAccount row : result.account()) {
      read += row.counts().read();
      setAside += row.counts().setAside();
    }
    System.out.printf("%s rows read, %s set aside. Tables written to %s.%n", read, setAside, out);
  }
}
