package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("reliability")
class ScratchTest {

  private static final String DEAD = "999999999999";
  private static final long OWN = ProcessHandle.current().pid();
  private static final String HERE = "pondtally-" + ThisMachine.mark() + "-";
  private static final String ELSEWHERE = "pondtally-" + ThisMachine.mark("x", "y") + "-";

  @TempDir private Path place;

  private String before;

  @BeforeEach
  void set() {
    before = System.setProperty("java.io.tmpdir", place.toString());
  }

  @AfterEach
  void unset() {
    System.setProperty("java.io.tmpdir", before);
  }

  private void folder(String name) throws IOException {
    Path folder = Files.createDirectories(place.resolve(name));
    Files.writeString(folder.resolve("rows"), "private");
    Files.setLastModifiedTime(folder, FileTime.from(Instant.now().minusSeconds(60)));
  }

  private List<String> left(Path made) throws IOException {
    try (Stream<Path> files = Files.list(place)) {
      return files
          .filter(file -> !file.equals(made))
          .map(file -> file.getFileName().toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void whatKilledRunsLeftIsRemovedAndNothingElse() throws IOException {
    String atWork = HERE + OWN + "-1";
    String ofAChild = HERE + DEAD + "-2";
    folder(HERE + DEAD + "-1");
    folder(atWork);
    folder(ofAChild + "/" + HERE + OWN + "-3");
    folder(ofAChild);
    folder(ELSEWHERE + DEAD + "-1");
    folder("pondtally-notes");
    folder("pondtally-7");
    folder("other-" + DEAD + "-1");
    Files.createSymbolicLink(place.resolve(HERE + DEAD + "-9"), place.resolve(atWork));
    Path made = Scratch.make();
    assertEquals(
        Stream.of(
                atWork,
                ofAChild,
                ELSEWHERE + DEAD + "-1",
                "pondtally-notes",
                "pondtally-7",
                "other-" + DEAD + "-1",
                HERE + DEAD + "-9")
            .sorted()
            .toList(),
        left(made));
    assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(made)));
  }

  /** Its process may have ended before that of the run itself has begun. */
  @Test
  void aFolderThatWasMadeJustNowIsLeftAlone() throws IOException {
    Path young = Files.createDirectory(place.resolve(HERE + DEAD + "-1"));
    Path made = Scratch.make();
    assertTrue(Files.exists(young));
    Scratch.delete(made);
    assertEquals(List.of(young.getFileName().toString()), left(made));
  }
}
