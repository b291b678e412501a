package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exit codes of the command: whose mistake it was. */
class MainTest {

  @TempDir private Path folder;

  @Test
  void helpAndVersionAreNoMistake() {
    assertEquals(0, Main.run("--help"));
    assertEquals(0, Main.run("report", "--help"));
    assertEquals(0, Main.run("--version"));
  }

  @Test
  void wrongUseIsTheCallers() {
    assertEquals(2, Main.run("reprot", "x"));
    assertEquals(2, Main.run("report", "x"));
    assertEquals(2, Main.run("report", "x", "--otu", "y"));
    assertEquals(2, Main.run("report", "x", "--out", "y", "--from", "31/12/2025"));
  }

  @Test
  void inputThatCannotBeUsed() {
    assertEquals(3, Main.run("check", folder.resolve("nowhere").toString()));
    assertEquals(3, Main.run("check", folder.toString()));
    assertEquals(
        3, Main.run("render", folder.toString(), "--out", folder.resolve("out").toString()));
  }
}
