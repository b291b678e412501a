package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.SheetReport;
import pondtally.fixture.Shown;

/** A very large text file and workbook, each read in a Java machine with little memory. */
@Tag("benchmark")
@Tag("reliability")
class BigFilesTest {

  private static final String HEADINGS =
      "device_id,visited_on,condition,cause,action,hours,cost_usd,wetland_acres,notes";
  private static final int BOOK_ROWS = 200_000;
  private static final long TEXT_BYTES = 1L << 30;

  @TempDir Path folder;

  private static String day(long row) {
    return LocalDate.ofEpochDay(12_000 + row % 8000).toString();
  }

  /** Reads one file and prints what came of it; run in a machine of its own. */
  static final class Reader {

    private Reader() {}

    public static void main(String[] arguments) {
      Path file = Path.of(arguments[0]);
      AtomicLong records = new AtomicLong();
      long start = System.nanoTime();
      List<SheetReport> reports =
          PartnerFileReader.read(
              Read.input(file), Read.SETTINGS, record -> records.incrementAndGet());
      System.out.printf(
          Locale.ROOT,
          "%s rows, %s records, %.1f s%n",
          reports.get(0).counts().read(),
          records.get(),
          (System.nanoTime() - start) / 1e9);
    }
  }

  private void reads(Path file, String heap, String expected)
      throws IOException, InterruptedException {
    Shown shown = Shown.risk("large files");
    File log = folder.resolve("log.txt").toFile();
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                heap,
                "-cp",
                System.getProperty("java.class.path"),
                Reader.class.getName(),
                file.toString())
            .redirectErrorStream(true)
            .redirectOutput(log)
            .start();
    int code = process.waitFor();
    String said = Files.readString(log.toPath());
    assertEquals(0, code, said);
    assertTrue(said.startsWith(expected), said);
    shown.that("%s of %,d bytes, %s: %s", file.getFileName(), Files.size(file), heap, said.strip());
  }

  @Test
  void aGigabyteOfTextStreams() throws IOException, InterruptedException {
    Path file = folder.resolve("revisits.csv");
    long rows = 0;
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write(HEADINGS + "\n");
      for (long bytes = 0; bytes < TEXT_BYTES; rows++) {
        String line =
            "D-%s,%s,working,,none,1.5,12.25,3.125,\"as it was, water %s in below the mark\"\n"
                .formatted(rows % 1_000_000, day(rows), rows % 30);
        out.write(line);
        bytes += line.length();
      }
    }
    reads(file, "-Xmx64m", "%s rows, %s records".formatted(rows, rows));
  }

  @Test
  void aWorkbookOfTwoHundredThousandRowsStreams() throws IOException, InterruptedException {
    Path file = folder.resolve("revisits.xlsx");
    try (SXSSFWorkbook book = new SXSSFWorkbook(100);
        OutputStream out = Files.newOutputStream(file)) {
      book.setCompressTempFiles(true);
      Sheet sheet = book.createSheet("revisits");
      fill(sheet.createRow(0), HEADINGS.split(",", -1));
      for (int i = 1; i <= BOOK_ROWS; i++) {
        fill(
            sheet.createRow(i),
            "D-" + i,
            day(i),
            "working",
            "",
            "none",
            "1.5",
            "12.25",
            "3.125",
            "row " + i);
      }
      book.write(out);
    }
    reads(file, "-Xmx256m", "%s rows, %s records".formatted(BOOK_ROWS, BOOK_ROWS));
  }

  private static void fill(Row row, String... cells) {
    for (int i = 0; i < cells.length; i++) {
      row.createCell(i).setCellValue(cells[i]);
    }
  }
}
