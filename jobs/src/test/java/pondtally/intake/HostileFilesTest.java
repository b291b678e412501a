package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.fixture.Shown;

/** Many generated files, well and ill: none makes the reader throw or lose a row. */
@Tag("reliability")
class HostileFilesTest {

  @TempDir Path folder;

  private long read(int from, int to) throws IOException {
    long rows = 0;
    for (int seed = from; seed < to; seed++) {
      rows += HostileCheck.of(folder, HostileFile.of(seed), "seed " + seed);
    }
    return rows;
  }

  @Test
  void noneCrashesAndNoRowIsLostOrChangedInSilence() throws IOException {
    assertTrue(read(0, 2000) > 12_000);
  }

  @Test
  @Tag("benchmark")
  void oneHundredThousandFiles() throws IOException {
    Shown shown = Shown.risk("lost rows");
    long rows = read(0, 100_000);
    assertTrue(rows > 600_000);
    shown.that(
        "100,000 hostile files, %,d rows: read = used + changed + set aside + duplicate, nothing thrown",
        rows);
  }

  @Test
  void someDamagedWorkbooksCanBeRead() throws IOException {
    int readable = 0;
    for (int seed = 0; seed < 200; seed++) {
      byte[] bytes = HostileFile.damagedWorkbook(new SplittableRandom(seed));
      HostileFile file = new HostileFile("installs.xlsx", bytes);
      readable += HostileCheck.of(folder, file, "seed " + seed) > 0 ? 1 : 0;
    }
    assertTrue(readable > 0 && readable < 200, "readable: " + readable);
  }

  @Test
  void cellsOfEveryReportedRowComeBack() throws IOException {
    for (int seed = 0; seed < 300; seed++) {
      Path file = folder.resolve("installs.csv");
      Files.writeString(file, HostileFile.text(new SplittableRandom(seed)));
      Read read = Read.file(file);
      TreeSet<Integer> rows = new TreeSet<>();
      read.reports().get(0).findings().forEach(finding -> rows.add(finding.origin().row()));
      rows.remove(0);
      assertEquals(
          rows.size(),
          PartnerFileReader.cells(Read.input(file), Map.of(0, rows)).size(),
          "seed " + seed);
    }
  }
}
