package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import pondtally.app.ThisMachine;
import pondtally.reports.fixture.Shown;

/** A run that somebody stops leaves nothing behind, and says what became of the report. */
@Tag("reliability")
@DisabledOnOs(OS.WINDOWS)
class StoppedRunSparkTest {

  private static final long MOST_MS = 60_000;
  private static final int ENDED_BY_TERM = 143;

  @TempDir Path folder;

  @Test
  void nothingIsLeftAndOneLineSaysSo() throws Exception {
    Shown shown = Shown.risk("run stopped by its user");
    SmallProgram.write(folder.resolve("program"));
    Path out = folder.resolve("out");
    String first = stopped(out);
    assertEquals("pondtally: stopped. Nothing was written.", first);
    assertFalse(Files.exists(out));
    assertEquals(0, start(out, "log-2").waitFor());
    String second = stopped(out);
    assertEquals("pondtally: stopped. %s is as it was.".formatted(out), second);
    WholeReport.require(out);
    shown.that("stopped twice while writing: no leftover, exit code 143, one line each");
  }

  private Process start(Path out, String log) throws Exception {
    return ChildRun.start(
        folder.resolve("tmp"),
        folder.resolve(log),
        "report",
        folder.resolve("program").toString(),
        "--out",
        out.toString(),
        "--replace");
  }

  private String stopped(Path out) throws Exception {
    Path log = folder.resolve("log");
    Files.deleteIfExists(log);
    Process run = start(out, "log");
    Path charts =
        folder
            .resolve(".out.writing-%s@%s".formatted(run.pid(), ThisMachine.name()))
            .resolve("charts");
    long late = System.currentTimeMillis() + MOST_MS;
    while (!Files.exists(charts) && System.currentTimeMillis() < late) {
      assertFalse(run.waitFor(5, TimeUnit.MILLISECONDS), "over before it was stopped");
    }
    run.destroy();
    assertEquals(ENDED_BY_TERM, run.waitFor());
    assertEquals(
        List.of(),
        WholeReport.names(folder).stream().filter(name -> name.startsWith(".out")).toList(),
        "left behind");
    List<String> said =
        Files.readAllLines(log).stream().filter(line -> !line.startsWith("WARNING")).toList();
    assertEquals(1, said.size(), said.toString());
    return said.get(0);
  }
}
