package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.Shown;

/** A run killed at any moment leaves the old report whole, or the new one. */
@Tag("reliability")
class KillSparkTest {

  @TempDir Path folder;

  @Test
  void twoKills() throws Exception {
    kill(2);
  }

  @Test
  @Tag("benchmark")
  void twoHundredKills() throws Exception {
    kill(200);
  }

  private void kill(int kills) throws Exception {
    Shown shown = Shown.risk("crash, kill -9");
    SmallProgram.write(folder.resolve("program"));
    Path out = folder.resolve("out");
    Path foreign = Files.createDirectory(folder.resolve(".out.writing-by-hand"));
    long whole = Math.min(timed(out), timed(out));
    Random random = new Random(7);
    int inTime = 0;
    int written = 0;
    int between = 0;
    int ended = 0;
    while (inTime < kills && ended < 3 * kills) {
      Process process = run(out);
      boolean isOver = process.waitFor((long) (random.nextDouble() * whole), TimeUnit.NANOSECONDS);
      process.destroyForcibly().waitFor();
      inTime += isOver ? 0 : 1;
      ended += isOver ? 1 : 0;
      between += Files.exists(out) ? 0 : 1;
      written += WholeReport.names(folder).stream().anyMatch(KillSparkTest::isBegun) ? 1 : 0;
      WholeReport.require(Files.exists(out) ? out : folder.resolve("out.previous"));
    }
    assertEquals(kills, inTime, "killed before the end");
    assertEquals(0, run(out).waitFor(), log());
    WholeReport.require(out);
    assertEquals(
        List.of(".out.writing-by-hand", "log", "out", "program", "tmp"), WholeReport.names(folder));
    assertTrue(Files.isDirectory(foreign), "what is not ours is left alone");
    shown.that(
        "%s kills at random moments of runs of %.1f s, %s with a folder begun, %s between two renames; each time the old report was whole, or the new one",
        kills, whole / 1e9, written, between);
  }

  private long timed(Path out) throws Exception {
    long start = System.nanoTime();
    assertEquals(0, run(out).waitFor(), log());
    return System.nanoTime() - start;
  }

  private Process run(Path out) throws IOException {
    return ChildRun.start(
        folder.resolve("tmp"),
        folder.resolve("log"),
        "report",
        folder.resolve("program").toString(),
        "--out",
        out.toString(),
        "--replace");
  }

  private String log() throws IOException {
    return Files.exists(folder.resolve("log")) ? Files.readString(folder.resolve("log")) : "";
  }

  private static boolean isBegun(String name) {
    return name.matches("[.]out[.]writing-\\d+(-\\w+)?@.+");
  }
}
