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

/** A run killed at any moment leaves the old report whole, or the new one. */
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
    SmallProgram.write(folder.resolve("program"));
    Path out = folder.resolve("out");
    Path foreign = Files.createDirectory(folder.resolve(".out.writing-by-hand"));
    long start = System.nanoTime();
    assertEquals(0, run(out).waitFor(), log());
    long whole = System.nanoTime() - start;
    Random random = new Random(7);
    int inTime = 0;
    int written = 0;
    int between = 0;
    for (int i = 0; i < kills; i++) {
      Process process = run(out);
      boolean ended =
          process.waitFor((long) (random.nextDouble() * 1.1 * whole), TimeUnit.NANOSECONDS);
      process.destroyForcibly().waitFor();
      inTime += ended ? 0 : 1;
      between += Files.exists(out) ? 0 : 1;
      written += WholeReport.names(folder).stream().anyMatch(KillSparkTest::isBegun) ? 1 : 0;
      WholeReport.require(Files.exists(out) ? out : folder.resolve("out.previous"));
    }
    assertEquals(0, run(out).waitFor(), log());
    WholeReport.require(out);
    assertEquals(
        List.of(".out.writing-by-hand", "log", "out", "program", "tmp"), WholeReport.names(folder));
    assertTrue(Files.isDirectory(foreign), "what is not ours is left alone");
    System.out.printf(
        "%s kills in runs of %.1f s: %s before the end, %s with a folder begun, %s between two renames%n",
        kills, whole / 1e9, inTime, written, between);
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
    return name.matches("[.]out[.]writing-\\d+(-\\w+)?");
  }
}
