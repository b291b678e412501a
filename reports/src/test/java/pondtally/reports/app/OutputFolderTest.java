package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.UserError;

class OutputFolderTest {

  @TempDir private Path parent;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(parent)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private void write(String text) throws IOException {
    try (OutputFolder folder = OutputFolder.prepare(parent.resolve("out"), true)) {
      Files.writeString(folder.path().resolve("run.json"), text);
      folder.commit();
    }
  }

  private void refused(String message, boolean replace) {
    UserError error =
        assertThrows(
            UserError.class, () -> OutputFolder.prepare(parent.resolve("out"), replace).close());
    assertEquals(4, error.exitCode());
    assertTrue(error.getMessage().contains(message), error.getMessage());
  }

  @Test
  void nothingAppearsBeforeItIsWhole() throws IOException {
    try (OutputFolder folder = OutputFolder.prepare(parent.resolve("out"), false)) {
      Files.writeString(folder.path().resolve("run.json"), "{}");
      assertFalse(Files.exists(parent.resolve("out")));
    }
    assertEquals(List.of(), names());
  }

  @Test
  void anEarlierRunIsReplacedOnlyWhenAsked() throws IOException {
    write("first");
    refused("--replace", false);
    write("second");
    assertEquals("second", Files.readString(parent.resolve("out/run.json")));
    assertEquals(List.of("out"), names());
  }

  @Test
  void aFolderThatIsNotOursIsNeverTouched() throws IOException {
    Files.createDirectory(parent.resolve("out"));
    Files.writeString(parent.resolve("out/letter.txt"), "dear");
    refused("was not written by pondtally", true);
    assertEquals("dear", Files.readString(parent.resolve("out/letter.txt")));
  }

  @Test
  void aFileIsNotAFolder() throws IOException {
    Files.writeString(parent.resolve("out"), "x");
    refused("is a file", true);
  }

  @Test
  void aKillBetweenTwoRenamesIsMended() throws IOException {
    write("old");
    Files.move(parent.resolve("out"), parent.resolve("out.previous"));
    refused("--replace", false);
    assertEquals("old", Files.readString(parent.resolve("out/run.json")));
  }

  @Test
  void leftoversOfStoppedRunsAreClearedAndOnlyThose() throws IOException {
    Files.createDirectory(parent.resolve(".out.writing-999999999999"));
    Files.createDirectory(parent.resolve(".other.writing-999999999999"));
    Files.createDirectory(parent.resolve(".out.writing-by-hand"));
    write("new");
    assertEquals(List.of(".other.writing-999999999999", ".out.writing-by-hand", "out"), names());
  }
}
