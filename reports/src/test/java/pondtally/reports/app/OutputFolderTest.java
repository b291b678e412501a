package pondtally.reports.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.app.ThisMachine;
import pondtally.check.UserError;
import pondtally.reports.fixture.Shown;

@Tag("reliability")
class OutputFolderTest {

  @TempDir private Path parent;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(parent)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private void write(String text) throws IOException {
    try (OutputFolder output = OutputFolder.prepare(parent.resolve("out"), true)) {
      output.fill(folder -> Files.writeString(folder.resolve("run.json"), text));
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
    try (OutputFolder output = OutputFolder.prepare(parent.resolve("out"), false)) {
      UserError error =
          assertThrows(
              UserError.class,
              () ->
                  output.fill(
                      folder -> {
                        Files.writeString(folder.resolve("run.json"), "{}");
                        assertFalse(Files.exists(parent.resolve("out")));
                        throw new IOException("Input/output error");
                      }));
      assertEquals(4, error.exitCode());
      assertEquals(
          "Cannot write %s: input/output error. Nothing was written. Make the place writable, or give another one, and run again."
              .formatted(parent.resolve("out")),
          error.getMessage());
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

  /** The name under which an earlier report waits may be taken by somebody else. */
  @Test
  void aFolderThatIsOnlyNamedLikeAnEarlierReportIsKept() throws IOException {
    write("old");
    Files.createDirectory(parent.resolve("out.previous"));
    Files.writeString(parent.resolve("out.previous/letter.txt"), "dear");
    refused("out.previous is in the way", true);
    assertEquals("dear", Files.readString(parent.resolve("out.previous/letter.txt")));
    assertEquals("old", Files.readString(parent.resolve("out/run.json")));
  }

  /** What decides is never the time of a file: the clock may go backwards between two runs. */
  @Test
  void aReportFromTheFutureIsReplacedLikeAnyOther() throws IOException {
    Shown shown = Shown.risk("clock changes");
    write("2099");
    for (Path path : List.of(parent.resolve("out/run.json"), parent.resolve("out"), parent)) {
      Files.setLastModifiedTime(path, FileTime.from(Instant.parse("2099-01-01T00:00:00Z")));
    }
    write("today");
    assertEquals("today", Files.readString(parent.resolve("out/run.json")));
    Files.move(parent.resolve("out"), parent.resolve("out.previous"));
    Files.setLastModifiedTime(
        parent.resolve("out.previous"), FileTime.from(Instant.parse("1999-01-01T00:00:00Z")));
    write("later");
    assertEquals("later", Files.readString(parent.resolve("out/run.json")));
    assertEquals(List.of("out"), names());
    shown.that("reports dated 2099 and 1999 replaced and restored like any other");
  }

  /** Whoever has the old report open reads on in it. */
  @Test
  void aReportThatIsOpenElsewhereIsReplacedUnderItsReader() throws IOException {
    Shown shown = Shown.risk("output open elsewhere");
    write("old and open");
    try (FileChannel open =
            FileChannel.open(
                parent.resolve("out/run.json"), StandardOpenOption.READ, StandardOpenOption.WRITE);
        FileLock lock = open.lock()) {
      write("new");
      assertTrue(lock.isValid());
      ByteBuffer read = ByteBuffer.allocate(20);
      open.read(read, 0);
      assertEquals("old and open", new String(read.array(), 0, read.position(), UTF_8));
    }
    assertEquals("new", Files.readString(parent.resolve("out/run.json")));
    assertEquals(List.of("out"), names());
    shown.that("a file held open and locked reads on as it was, the new report is whole");
  }

  @Test
  void aFileIsNotAFolder() throws IOException {
    Files.writeString(parent.resolve("out"), "x");
    refused("is a file", true);
    UserError below =
        assertThrows(
            UserError.class, () -> OutputFolder.prepare(parent.resolve("out/below"), false));
    assertEquals(
        "Cannot write %s: %s is a file. Give the name of a folder elsewhere."
            .formatted(parent.resolve("out/below"), parent.resolve("out")),
        below.getMessage());
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
    String dead = ".writing-999999999999";
    String here = "@" + ThisMachine.name();
    List<String> others =
        List.of(".other" + dead + here, ".out.writing-by-hand", ".out" + dead, ".out" + dead + "@");
    for (String name : others) {
      Files.createDirectory(parent.resolve(name));
    }
    for (String part : List.of("", "-old", "-replaced")) {
      Files.createDirectory(parent.resolve(".out" + dead + part + here));
    }
    write("new");
    assertEquals(Stream.concat(others.stream(), Stream.of("out")).sorted().toList(), names());
  }

  /** Its process is unknown here, whether it is at work or not. */
  @Test
  void whatARunOnAnotherMachineWritesIsLeftAlone() throws IOException {
    write("old");
    Path theirs =
        Files.createDirectory(parent.resolve(".out.writing-999999999999@pond-laptop.0a1b2c"));
    Files.writeString(theirs.resolve("half"), "half");
    refused(
        "A run on the machine pond-laptop is writing %s, or was stopped there; it wrote last within the last two minutes. Wait for its end, or give another name. If no run is at work on pond-laptop, remove %s."
            .formatted(parent.resolve("out"), theirs),
        true);
    age(theirs.resolve("half"), Duration.ofDays(6));
    age(theirs, Duration.ofDays(8));
    refused("it wrote last 6 days ago", true);
    assertEquals("half", Files.readString(theirs.resolve("half")));
    assertEquals("old", Files.readString(parent.resolve("out/run.json")));
    assertEquals(List.of(theirs.getFileName().toString(), "out"), names(), "nothing of ours");
  }

  /** Nobody writes for a week; what waited there to be removed does not stand in the way. */
  @Test
  void whatAnotherMachineLeftLongAgoIsRemoved() throws IOException {
    Path old = Files.createDirectory(parent.resolve(".out.writing-7@pond-laptop.0a1b2c"));
    Path goingAway = Files.createDirectory(parent.resolve(".out.writing-7-old@pond-laptop.0a1b2c"));
    Files.writeString(old.resolve("half"), "half");
    age(old.resolve("half"), Duration.ofDays(8));
    age(old, Duration.ofDays(9));
    String said = said(() -> write("new"));
    assertEquals(
        "pondtally: %s was left by a run on the machine pond-laptop, which wrote last 8 days ago; it is removed.%n"
            .formatted(old),
        said);
    assertEquals(List.of(goingAway.getFileName().toString(), "out"), names());
  }

  private static void age(Path path, Duration age) throws IOException {
    Files.setLastModifiedTime(path, FileTime.from(Instant.now().minus(age).minusSeconds(60)));
  }

  private interface Step {
    void run() throws IOException;
  }

  private static String said(Step step) throws IOException {
    PrintStream before = System.err;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    System.setErr(new PrintStream(bytes, true, UTF_8));
    try {
      step.run();
    } finally {
      System.setErr(before);
    }
    return bytes.toString(UTF_8);
  }

  /** A link to a disk with more room stays one: the report lies where it leads. */
  @Test
  void aLinkStandsForTheFolderItLeadsTo() throws IOException {
    Path disk = Files.createDirectory(parent.resolve("disk"));
    Files.createSymbolicLink(parent.resolve("out"), disk);
    write("first");
    write("second");
    assertTrue(Files.isSymbolicLink(parent.resolve("out")));
    assertEquals("second", Files.readString(disk.resolve("run.json")));
    assertEquals(List.of("disk", "out"), names());
    Files.delete(disk.resolve("run.json"));
    Files.delete(disk);
    refused("is a link that leads nowhere", true);
  }
}
