package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fault.FaultyProvider;
import pondtally.reports.fault.WriteFaults;

/** A failure at each write call of a run leaves the old report as it was, or the new one whole. */
class WriteFaultSparkTest {

  private static final int MOST_HOURS = 3;

  @TempDir Path folder;

  /** Some calls: the first ones, then far apart, at other calls for each kind. */
  @Test
  void someCallsFail() throws Exception {
    fail(1, 220, WriteFaults.Kind.ONCE, true);
    fail(70, 440, WriteFaults.Kind.DISK_FULL, true);
    fail(5, 500, WriteFaults.Kind.ONCE, false);
  }

  @Test
  @Tag("benchmark")
  void eachCallFails() throws Exception {
    fail(1, 1, WriteFaults.Kind.ONCE, true);
    fail(1, 1, WriteFaults.Kind.DISK_FULL, true);
    fail(1, 1, WriteFaults.Kind.ONCE, false);
  }

  private void fail(int first, int step, WriteFaults.Kind kind, boolean replaces) throws Exception {
    Path log = folder.resolve("log-" + kind + replaces);
    String[] arguments = {
      folder.resolve("program").toString(),
      folder.resolve("out-" + kind + replaces).toString(),
      "" + first,
      "" + step,
      kind.toString(),
      "" + replaces
    };
    Process process =
        ChildRun.start(
            folder.resolve("tmp"),
            log,
            System.getProperty("java.class.path"),
            List.of(
                "-Djava.nio.file.spi.DefaultFileSystemProvider=" + FaultyProvider.class.getName()),
            WriteFaultLoop.class,
            arguments);
    boolean ended = process.waitFor(MOST_HOURS, TimeUnit.HOURS);
    process.destroyForcibly().waitFor();
    String said = Files.readString(log);
    assertTrue(ended && process.exitValue() == 0, said);
    List<String> lines = said.lines().filter(line -> line.contains("write calls")).toList();
    lines.forEach(System.out::println);
    assertEquals(1, lines.size(), said);
  }
}
