package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.UserError;

/** The key of the public edition: where it may lie, and what is said of it. */
@Tag("reliability")
@DisabledOnOs(OS.WINDOWS)
class PublicReportTest {

  private static final String OPEN =
      "Others on this machine may read or write it: take that from them, for example with chmod 600.";

  @TempDir Path folder;

  private Path out;

  @BeforeEach
  void makeOutput() throws IOException {
    out = Files.createDirectory(folder.resolve("out"));
  }

  private void refused(String key) {
    Path file = folder.resolve(key);
    UserError error =
        assertThrows(UserError.class, () -> PublicReport.key(file, out), file.toString());
    assertEquals(2, error.exitCode());
    assertEquals(
        "--key %s lies inside the output. Whoever has the key can undo the replaced names: keep it elsewhere."
            .formatted(file),
        error.getMessage());
  }

  /** The output is handed out with everything in it, whatever the way there is called. */
  @Test
  void aKeyWithinTheOutputIsRefusedByWhateverName() throws IOException {
    refused("out/own.key");
    refused("out/below/own.key");
    refused("elsewhere/../out/own.key");
    Files.createSymbolicLink(folder.resolve("link"), out);
    refused("link/own.key");
    refused("link/below/own.key");
    PublicReport.key(folder.resolve("own.key"), out);
    Files.move(folder.resolve("own.key"), out.resolve("own.key"));
    Files.createSymbolicLink(folder.resolve("linked.key"), out.resolve("own.key"));
    refused("linked.key");
    assertEquals(1, out.toFile().list().length, "no key was written into it");
  }

  /** A link to where no file is yet would have the key made there. */
  @Test
  void aLinkThatLeadsIntoTheOutputMakesNoKeyThere() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("new.key"), out.resolve("new.key"));
    UserError error = assertThrows(UserError.class, () -> PublicReport.key(link, out));
    assertEquals(4, error.exitCode());
    assertEquals(0, out.toFile().list().length);
  }

  @Test
  @Timeout(value = 20, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void whatIsNoFileIsNoKey() throws Exception {
    Path pipe = folder.resolve("pipe.key");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    for (Path file : new Path[] {pipe, Files.createDirectory(folder.resolve("folder.key"))}) {
      UserError error = assertThrows(UserError.class, () -> PublicReport.key(file, out));
      assertEquals(2, error.exitCode());
      assertTrue(error.getMessage().contains(" is no key file: "), error.getMessage());
    }
  }

  @Test
  void aKeyThatOthersMayReadOrWriteIsWarnedOf() throws IOException {
    Path key = folder.resolve("own.key");
    PublicReport.key(key, out);
    assertFalse(PublicReport.keyNote(key).contains(OPEN), PublicReport.keyNote(key));
    for (String rights : new String[] {"rw-r-----", "rw----r--", "rw--w----", "rw-rw-rw-"}) {
      Files.setPosixFilePermissions(key, PosixFilePermissions.fromString(rights));
      assertTrue(PublicReport.keyNote(key).contains(" " + OPEN + " "), rights);
    }
    assertFalse(PublicReport.keyNote(null).contains(OPEN));
  }
}
