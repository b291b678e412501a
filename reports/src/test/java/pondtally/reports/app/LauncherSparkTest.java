package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.Shown;

/** The two Java machines of a run: what the first hands on, and what its end means. */
@EnabledOnOs(OS.LINUX)
@Tag("reliability")
class LauncherSparkTest {

  private static final long MOST_MS = 60_000;

  @TempDir Path folder;

  private Path jar;
  private Path temporary;

  @BeforeEach
  void make() throws Exception {
    jar = JarRun.make(folder.resolve("pondtally.jar"));
    temporary = Files.createDirectory(folder.resolve("tmp"));
  }

  private Process start(Map<String, String> variables, String... arguments) throws IOException {
    return JarRun.start(
        variables, jar, temporary, folder.resolve("screen"), folder.resolve("err"), arguments);
  }

  /** Nobody waits for the second machine any more, and nobody clears up after it. */
  @Test
  void theSecondMachineEndsWithTheFirst() throws Exception {
    Shown shown = Shown.risk("kill -9 of the first of two machines");
    SmallProgram.write(folder.resolve("program"));
    Path out = folder.resolve("out");
    Process first =
        start(Map.of(), "report", folder.resolve("program").toString(), "--out", out.toString());
    await(() -> WholeReport.names(folder).stream().anyMatch(name -> name.startsWith(".out")));
    ProcessHandle second = first.children().findFirst().orElseThrow();
    assertTrue(first.isAlive());
    first.destroyForcibly().waitFor();
    second.onExit().get(MOST_MS, TimeUnit.MILLISECONDS);
    assertEquals(
        List.of("err", "pondtally.jar", "program", "screen", "tmp"), WholeReport.names(folder));
    assertEquals(List.of(), WholeReport.names(temporary));
    List<String> said = Files.readAllLines(folder.resolve("err"));
    assertEquals(
        "pondtally: stopped. Nothing was written.", said.get(said.size() - 1), said.toString());
    shown.that("the second stops, no output begun and no temporary file is left");
  }

  private static void await(BooleanSupplier isSo) throws InterruptedException {
    long late = System.currentTimeMillis() + MOST_MS;
    while (!isSo.getAsBoolean()) {
      assertTrue(System.currentTimeMillis() < late, "waited in vain");
      Thread.sleep(5);
    }
  }

  /** In jobs that run at night nothing is said of the language. */
  @Test
  void namesWithOtherLettersAreReadWhereNoLanguageIsSet() throws Exception {
    Path north = Files.createDirectories(folder.resolve("program/north"));
    Files.writeString(
        north.resolve("installs-\u00e9t\u00e9.csv"),
        "device_id,site_id,installed_on\nD1,S1,2024-05-01\n");
    Files.writeString(north.resolve("sites.csv"), "site_id,town\nS1,x\n");
    Process run = start(Map.of("LC_ALL", "C"), "check", folder.resolve("program").toString());
    assertEquals(0, run.waitFor(), () -> read("err"));
    String said = read("screen");
    assertTrue(said.contains("north/installs-\u00e9t\u00e9.csv"), said);
    assertTrue(said.contains("2 rows read = 2 used"), said);
  }

  private String read(String name) {
    try {
      return Files.readString(folder.resolve(name));
    } catch (IOException e) {
      return e.toString();
    }
  }
}
