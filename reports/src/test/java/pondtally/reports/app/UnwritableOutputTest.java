package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.app.ThisMachine;
import pondtally.check.FileFault;
import pondtally.check.UserError;
import pondtally.reports.fixture.Shown;

/** Outputs that cannot be written: whose turn it is, and what is said. */
@Tag("reliability")
class UnwritableOutputTest {

  @TempDir Path folder;

  @Test
  void theSecondOfTwoRunsIsRefused() throws Exception {
    Shown shown = Shown.risk("two runs at once");
    Process other = new ProcessBuilder("sleep", "60").start();
    try {
      Path theirs =
          Files.createDirectory(
              folder.resolve(".out.writing-%s@%s".formatted(other.pid(), ThisMachine.name())));
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
    shown.that("the second is refused with exit code 4 and leaves nothing");
  }

  @Test
  void aFullDiskIsNoFaultOfTheProgram() {
    IOException full = new IOException("No space left on device");
    assertTrue(DiskFull.isCauseOf(new IllegalStateException(new UncheckedIOException(full))));
    assertFalse(DiskFull.isCauseOf(new IllegalStateException(new IOException("Stale handle"))));
  }

  @Test
  void theReasonIsSaidInWords() {
    Path out = folder.resolve("out");
    said(
        "you have no permission to write there, or a file in it is open in another program",
        new AccessDeniedException(out.toString()));
    said("the disk is read-only", new FileSystemException("x", null, "Read-only file system"));
    said("stale file handle", new IOException("Stale file handle"));
    said("it already exists", new FileAlreadyExistsException("x"));
    said("a folder was removed meanwhile", new NoSuchFileException("x"));
    assertTrue(
        Unwritable.full(out, 3_456_789)
            .getMessage()
            .matches(
                "Cannot write .*out: the disk is full[.] Free there: .* [(]more than 3[.]5 MB are needed[)]; free in the folder for temporary files, .*: .*[.] Nothing was written[.] .*"));
  }

  private void said(String reason, IOException fault) {
    UserError error = Unwritable.error(folder.resolve("out"), fault);
    assertEquals(4, error.exitCode());
    assertEquals(
        "Cannot write %s: %s. Nothing was written. Make the place writable, or give another one, and run again."
            .formatted(folder.resolve("out"), reason),
        error.getMessage());
  }

  /** What goes wrong in a task is the disk's fault only where it says so of the output. */
  @Test
  void otherFaultsAreNotTheDisks() {
    FileSystemException ours =
        new FileSystemException(
            folder.resolve("tables/a.csv").toString(), null, "Input/output error");
    Throwable task = new IllegalStateException("a task failed", new UncheckedIOException(ours));
    assertEquals(ours, Unwritable.causeOf(task, folder).orElseThrow());
    assertTrue(Unwritable.causeOf(task, folder.resolve("other")).isEmpty());
    assertTrue(Unwritable.causeOf(new FileFault("north/a.csv", task), folder).isEmpty());
    assertTrue(Unwritable.causeOf(new IOException("Connection reset by peer"), folder).isEmpty());
    assertTrue(Unwritable.causeOf(new IOException("Input/output error"), folder).isPresent());
  }
}
