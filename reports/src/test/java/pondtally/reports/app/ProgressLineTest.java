package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import pondtally.stage.Progress.Step;

class ProgressLineTest {

  @Test
  void tellsRowsAndTheirRateWhileFilesAreRead() {
    assertEquals(
        "Reading files: 1,200,000 rows, 300,000 a second (4 s)",
        ProgressLine.text(Step.READING, 1_200_000, 4));
    assertEquals("Starting (1 s)", ProgressLine.text(Step.STARTING, 0, 1));
    assertEquals(
        "Computing tables: 1,200,000 rows (12 s)",
        ProgressLine.text(Step.ANALYSING, 1_200_000, 12));
  }

  @Test
  void theLineIsWrittenOverAndWipedAtTheEnd() throws InterruptedException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream terminal = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    ProgressLine line = ProgressLine.start(terminal, () -> Step.COUNTING, () -> 7, 0, 1);
    while (bytes.size() == 0) {
      Thread.sleep(1);
    }
    line.close();
    String shown = bytes.toString(StandardCharsets.UTF_8);
    assertTrue(shown.startsWith("\r\u001b[KChecking rows and counting: 7 rows (0 s)"), shown);
    assertTrue(shown.endsWith("\r\u001b[K"), shown);
    assertTrue(shown.indexOf('\n') < 0, shown);
  }
}
