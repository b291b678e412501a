package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.table.TablePackage;

/** A run killed at any moment leaves the old report whole, or the new one. */
class KillSparkTest {

  private static final Path SAMPLE = Path.of("..", "sample-data");

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
    Path out = folder.resolve("out");
    Path foreign = Files.createDirectory(folder.resolve(".out.writing-by-hand"));
    long start = System.nanoTime();
    assertEquals(0, run(out).waitFor(), log());
    long whole = System.nanoTime() - start;
    Random random = new Random(7);
    int inTime = 0;
    for (int i = 0; i < kills; i++) {
      Process process = run(out);
      boolean ended =
          process.waitFor((long) (random.nextDouble() * 1.1 * whole), TimeUnit.NANOSECONDS);
      process.destroyForcibly().waitFor();
      inTime += ended ? 0 : 1;
      requireWhole(Files.exists(out) ? out : folder.resolve("out.previous"));
    }
    assertEquals(0, run(out).waitFor(), log());
    requireWhole(out);
    assertEquals(List.of(".out.writing-by-hand", "log", "out", "tmp"), names());
    assertTrue(Files.isDirectory(foreign), "what is not ours is left alone");
    System.out.printf("%s kills, %s of them before the end of the run%n", kills, inTime);
  }

  private Process run(Path out) throws IOException {
    return ChildRun.start(
        folder.resolve("tmp"),
        folder.resolve("log"),
        "report",
        SAMPLE.toString(),
        "--out",
        out.toString(),
        "--replace");
  }

  private String log() throws IOException {
    return Files.exists(folder.resolve("log")) ? Files.readString(folder.resolve("log")) : "";
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** Tables whose sums are right, and every report. */
  private static void requireWhole(Path out) throws IOException {
    TablePackage.open(out.resolve("tables"));
    for (String name :
        List.of("run.json", "report.html", "program.xlsx", "grant.docx", "fix-list.xlsx")) {
      assertTrue(Files.size(out.resolve(name)) > 0, name);
    }
  }
}
