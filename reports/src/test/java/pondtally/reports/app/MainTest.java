package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;

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

  /** There the next run would read it as records. */
  @Test
  void aReportIsNotWrittenIntoWhatIsRead() throws IOException {
    Path program = Files.createDirectories(folder.resolve("program/north")).getParent();
    Files.createSymbolicLink(folder.resolve("link"), program);
    for (String out : List.of("program/report", "program/north/a/b", "program", "link/report")) {
      assertEquals(
          2, Main.run("report", program.toString(), "--out", folder.resolve(out).toString()), out);
    }
    assertEquals(
        3, Main.run("report", program.toString(), "--out", folder.resolve("program-2").toString()));
  }

  @Command(name = "break")
  private static final class Breaking implements Callable<Integer> {
    private final Error error;

    Breaking(Error error) {
      this.error = error;
    }

    @Override
    public Integer call() {
      if (error instanceof StackOverflowError) {
        return call() + 1;
      }
      throw error;
    }
  }

  /** Such errors go past the handler of exceptions; without a sentence they are a page of Java. */
  @Test
  void errorsOfTheMachineAreFaultsOfTheProgramInOneSentence() {
    for (Error error :
        List.of(
            new StackOverflowError(),
            new NoClassDefFoundError("org/apache/poi/Missing"),
            new ExceptionInInitializerError(new IllegalStateException("no setting")),
            new UnsatisfiedLinkError("no font library"))) {
      StringWriter said = new StringWriter();
      CommandLine line = new CommandLine(new Main());
      line.setErr(new PrintWriter(said, true));
      line.addSubcommand(new Breaking(error));
      assertEquals(70, Main.run(line, "break"), error.toString());
      List<String> lines = said.toString().lines().toList();
      assertEquals(
          "pondtally: this is a fault of the program, not of your files. Please report it with the lines below,",
          lines.get(0));
      assertTrue(lines.get(1).startsWith("the command (break) and what"), lines.get(1));
      assertTrue(lines.get(2).startsWith("  " + error.getClass().getName()), lines.get(2));
      assertTrue(lines.size() <= 4, "no page of Java: " + lines);
    }
  }

  @Test
  void settingsThatAreMeantToDoHarm() throws IOException {
    Path crew = Files.createDirectories(folder.resolve("crew"));
    Files.writeString(crew.resolve("sites.csv"), "site_id\nS1\n");
    for (String text : List.of("region: " + "[".repeat(100_000), "#" + "x".repeat(1_000_001))) {
      for (String name : List.of("program.yaml", "crew/columns.yaml")) {
        Files.writeString(folder.resolve(name), text);
        assertEquals(3, Main.run("check", folder.toString()), name);
        Files.delete(folder.resolve(name));
      }
    }
  }
}
