package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.UserError;

/** Outputs that cannot be written: whose turn it is, and what is said. */
class UnwritableOutputTest {

  @TempDir Path folder;

  @Test
  void theSecondOfTwoRunsIsRefused() throws Exception {
    Process other = new ProcessBuilder("sleep", "60").start();
    try {
      Path theirs = Files.createDirectory(folder.resolve(".out.writing-" + other.pid()));
      UserError error =
          assertThrows(UserError.class, () -> OutputFolder.prepare(folder.resolve("out"), true));
      assertEquals(4, error.exitCode());
      assertTrue(error.getMessage().contains("process " + other.pid()), error.getMessage());
      assertTrue(Files.isDirectory(theirs));
      assertEquals(1, folder.toFile().list().length, "nothing of the refused run is left");
    } finally {
      other.destroyForcibly().waitFor();
    }
    try (OutputFolder output = OutputFolder.prepare(folder.resolve("out"), true)) {
      assertEquals(1, folder.toFile().list().length, "what the other run left is cleared");
      boolean isMade = output.fill(made -> Files.isDirectory(made));
      assertTrue(isMade);
    }
  }

  @Test
  void aFullDiskIsNoFaultOfTheProgram() {
    IOException full = new IOException("No space left on device");
    assertTrue(DiskFull.isCauseOf(new IllegalStateException(new UncheckedIOException(full))));
    assertFalse(DiskFull.isCauseOf(new IllegalStateException(new IOException("Stale handle"))));
  }
}
