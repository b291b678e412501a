package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full before the report is whole, and one that cannot be written. */
class FullDiskSparkTest {

  private static final long ROOM = 200_000_000;

  @TempDir Path folder;

  private Path program;
  private Path out;
  private String said;

  @Test
  void theOldReportIsAsItWasOnAFullDisk() throws Exception {
    fill(3);
  }

  @Test
  @Tag("benchmark")
  void fortySizesOfDisks() throws Exception {
    fill(40);
  }

  private void fill(int sizes) throws Exception {
    program = SmallProgram.write(folder.resolve("program"));
    Path disk = folder.resolve("disk");
    out = disk.resolve("out");
    try (Mount mount = Mount.of(disk, ROOM)) {
      assertEquals(0, report(), said);
      long whole = used(disk);
      SortedMap<String, String> old = WholeReport.sums(out);
      for (int i = 0; i < sizes; i++) {
        // From no room at all up to nearly what a second report takes.
        long room = (long) ((i + 0.1) / sizes * whole * 0.95);
        mount.resize(whole + Math.max(room, 1));
        assertEquals(4, report(), said);
        assertEquals(old, WholeReport.sums(out), "with room for " + room);
        assertEquals(List.of("out"), WholeReport.names(disk));
        assertTrue(
            said.matches(
                "pondtally: Cannot write %s: the disk is full[.] Free there: .* [(]the report that is there takes .*[)]; free in the folder for temporary files, .*[.] What is there is as it was[.] Make the place writable, or give another one, and run again[.]"
                    .formatted(out)),
            said);
      }
      mount.resize(ROOM);
      assertEquals(0, report(), said);
      assertFalse(old.equals(WholeReport.sums(out)));
      WholeReport.require(out);
      System.out.printf("%s sizes of a full disk, a report of %,d bytes%n", sizes, whole);
    }
  }

  @Test
  void aReadOnlyDiskIsNamed() throws Exception {
    program = SmallProgram.write(folder.resolve("program"));
    Path disk = folder.resolve("disk");
    out = disk.resolve("out");
    try (Mount mount = Mount.of(disk, ROOM)) {
      assertEquals(0, report(), said);
      SortedMap<String, String> old = WholeReport.sums(out);
      mount.makeReadOnly();
      assertEquals(4, report(), said);
      assertEquals(
          "pondtally: Cannot write %s: the disk is read-only. What is there is as it was. Make the place writable, or give another one, and run again."
              .formatted(out),
          said);
      assertEquals(old, WholeReport.sums(out));
    }
  }

  private static long used(Path disk) throws IOException {
    return Files.getFileStore(disk).getTotalSpace() - Files.getFileStore(disk).getUsableSpace();
  }

  private int report() {
    PrintStream err = System.err;
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    try (PrintStream into = new PrintStream(told, true, StandardCharsets.UTF_8)) {
      System.setErr(into);
      return Main.run("report", program.toString(), "--out", out.toString(), "--replace");
    } finally {
      System.setErr(err);
      said = told.toString(StandardCharsets.UTF_8).strip();
    }
  }
}
