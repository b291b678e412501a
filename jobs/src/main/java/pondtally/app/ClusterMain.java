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

  /** Runs the job; returns the exit code. */
  static int run(String... arguments) {
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
    try (SharedFolder shared = SharedFolder.in(wanted.shared())) {
      Path tables = Files.createDirectory(session.scratch().resolve("tables"));
      LongTables longTables = new LongTables(shared.path(), wanted.contributions());
      JobRequest request =
          new JobRequest(
                  program.folder(),
                  (int) LocalDate.now().toEpochDay(),
                  wanted.from(),
                  wanted.to(),
                  0)
              .with(longTables);
      JobResult result = Job.run(session, request, program::forTasks);
      shared.moveTo(tables);
      ResultPackage.write(tables, result.tables(), result.longTables(), result.facts());
      output.write(tables, Version.text());
      print(result, wanted.out());
    } catch (UserError e) {
      throw program.named(e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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
