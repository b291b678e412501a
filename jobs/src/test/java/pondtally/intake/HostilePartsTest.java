package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.Finding;
import pondtally.check.SheetReport;
import pondtally.record.Sourced;

/**
 * Files made to use up memory or time are read or refused with a sentence, in a Java machine of 128
 * MiB. (A name of a file cannot hold the character NUL on any file system that Java knows.)
 */
class HostilePartsTest {

  private static final int MOST_SECONDS = 300;
  private static final List<String> SAID =
      List.of("file-unreadable", "long-cell", "unrecognised-table");

  @TempDir Path folder;

  /** Reads files and says of each what came of it; run in a machine of its own. */
  static final class Reader {

    private Reader() {}

    public static void main(String[] files) {
      for (String name : files) {
        heap().forEach(MemoryPoolMXBean::resetPeakUsage);
        long start = System.nanoTime();
        List<Sourced> records = new ArrayList<>();
        List<SheetReport> reports =
            PartnerFileReader.read(Read.input(Path.of(name)), Read.SETTINGS, records::add);
        double seconds = (System.nanoTime() - start) / 1e9;
        long peak = heap().stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
        System.out.printf(
            Locale.ROOT,
            "%s: %s records, %s|%.1f s, %,d bytes of heap at most%n",
            Path.of(name).getFileName(),
            records.size(),
            reports.get(0).findings().stream()
                .filter(finding -> SAID.contains(finding.rule()))
                .map(Finding::message)
                .findFirst()
                .orElse("read"),
            seconds,
            peak);
      }
    }

    private static List<MemoryPoolMXBean> heap() {
      return ManagementFactory.getMemoryPoolMXBeans().stream()
          .filter(pool -> pool.getType() == MemoryType.HEAP)
          .toList();
    }
  }

  private List<String> read(List<Path> files) throws IOException, InterruptedException {
    Path log = folder.resolve("log.txt");
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx128m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Reader.class.getName()));
    files.forEach(file -> command.add(file.toString()));
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    boolean ended = process.waitFor(MOST_SECONDS, TimeUnit.SECONDS);
    process.destroyForcibly().waitFor();
    String said = Files.readString(log);
    System.out.print(said);
    assertTrue(ended, "not within %s s: %s".formatted(MOST_SECONDS, said));
    assertEquals(0, process.exitValue(), said);
    return said.lines().map(line -> line.split("\\|", -1)[0]).toList();
  }

  private Path book(String name, HostileParts.Body body) throws IOException {
    Path file = folder.resolve(name);
    HostileParts.book(file, body);
    return file;
  }

  @Test
  void eachIsReadOrRefusedWithASentence() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
    Path wide = folder.resolve("installs-wide.csv");
    HostileParts.wideText(wide, 10_000);
    Path nameless = Files.copy(wide, folder.resolve("wide.csv"));
    Path cell = folder.resolve("cell.csv");
    HostileParts.longText(cell, 50_000_000);
    List<String> said =
        read(
            List.of(
                book("plain.xlsx", HostileParts.blanks(0)),
                book("bomb.xlsx", HostileParts.blanks(200L << 20)),
                book("entity.xlsx", HostileParts.outsideEntity(secret)),
                book("laughs.xlsx", HostileParts.laughs()),
                book("wide.xlsx", HostileParts.wideBook(10_000)),
                wide,
                nameless,
                book("cell.xlsx", HostileParts.longCell(50_000_000)),
                cell));
    String entities =
        "0 records, This sheet cannot be read: it declares entities (DOCTYPE), which no workbook does"
            + " and which may be meant to do harm. Nothing of it is counted.";
    assertEquals("plain.xlsx: 1 records, read", said.get(0));
    assertTrue(said.get(1).startsWith("bomb.xlsx: "), said.get(1));
    assertTrue(said.get(1).contains("it unpacks to far more than a workbook should"), said.get(1));
    assertEquals("entity.xlsx: " + entities, said.get(2));
    assertFalse(String.join("", said).contains("secret"));
    assertEquals("laughs.xlsx: " + entities, said.get(3));
    assertEquals("wide.xlsx: 20 records, read", said.get(4));
    assertEquals("installs-wide.csv: 20 records, read", said.get(5));
    assertTrue(
        said.get(6)
            .startsWith(
                "wide.csv: 0 records, Neither the name nor the headings tell which table this is."),
        said.get(6));
    cells(said.subList(7, 9));
  }

  @Test
  @Tag("benchmark")
  void aGigabyteInOneCell() throws Exception {
    Path cell = folder.resolve("cell.csv");
    HostileParts.longText(cell, 1L << 30);
    cells(read(List.of(book("cell.xlsx", HostileParts.longCell(1L << 30)), cell)));
  }

  /** In a workbook the row is told and those below it are read; the lines of a text are bounded. */
  private static void cells(List<String> said) {
    assertEquals(
        "cell.xlsx: 1 records, A cell holds more than 100,000 characters, so the row was not read."
            + " Expected 32,767 at most, which is what a cell of a workbook can hold. Row set aside.",
        said.get(0));
    assertEquals(
        "cell.csv: 0 records, The file cannot be read: a line is longer than 1,000,000 characters."
            + " Nothing of it is counted.",
        said.get(1));
  }
}
