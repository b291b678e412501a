package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What {@code --version --verbose} says, and what it keeps to itself. */
@Tag("reliability")
class FaultFactsTest {

  @Test
  void everyFactIsThere() {
    String text = String.join("\n", FaultFacts.lines());
    for (String fact :
        List.of(
            "pondtally: ",
            "Java: +" + System.getProperty("java.runtime.version").replace("+", "\\+"),
            "memory: +\\d+ MiB; a run takes up to \\d+ MiB",
            "processors: +[1-9]",
            "Spark: +4\\.\\d+\\.\\d+",
            "POI: +5\\.\\d+\\.\\d+",
            "JFreeChart: +1\\.\\d+\\.\\d+",
            "Commons CSV: +1\\.\\d+",
            "letters of charts: +Noto Sans, with the program",
            "fonts: +\\d+ installed; they draw [0-6] of 6 scripts",
            "locale: +\\S",
            "characters: +\\S",
            "time zone: +\\S")) {
      assertTrue(text.matches("(?s)(.*\n)?" + fact + ".*"), () -> fact + " in\n" + text);
    }
    assertFalse(text.contains("not found"), text);
  }

  @Test
  void noPathAndNoName() {
    String text = String.join("\n", FaultFacts.lines());
    for (String property :
        List.of("user.home", "user.dir", "java.home", "java.class.path", "java.io.tmpdir")) {
      assertFalse(text.contains(System.getProperty(property)), () -> property + " in\n" + text);
    }
    assertFalse(text.contains(Path.of("").toAbsolutePath().getRoot() + "home"), text);
    String host = System.getenv("HOSTNAME");
    assertFalse(host != null && !host.isBlank() && text.contains(host), text);
  }

  @Test
  void theCommandPrintsThemWhenAsked() {
    assertEquals(1, printed("--version").lines().count());
    assertEquals(FaultFacts.lines().size(), printed("--version", "--verbose").lines().count());
    assertEquals(FaultFacts.lines().size(), printed("--verbose", "--version").lines().count());
  }

  private static String printed(String... arguments) {
    PrintStream screen = System.out;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      assertEquals(0, Main.run(arguments));
    } finally {
      System.setOut(screen);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
