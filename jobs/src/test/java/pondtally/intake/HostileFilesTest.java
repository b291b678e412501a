package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.Finding;
import pondtally.check.Severity;
import pondtally.check.SheetReport;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** Many generated files, well and ill: none makes the reader throw or lose a row. */
class HostileFilesTest {

  private static final String[] CELLS = {
    "D1",
    "S1",
    "2024-05-01",
    "31/02/2024",
    "03/04/2024",
    "13/04/2024",
    "12",
    "12\"",
    "1,234",
    "1.234,5",
    "380 mm",
    "$12",
    "yes",
    "no",
    "maybe",
    "dual",
    "Pond Leveler",
    "pluged",
    "",
    " ",
    "n/a",
    "#N/A",
    "=1+1",
    "-5",
    "1e9",
    "9.9E+10",
    "99010203.0",
    "Total",
    "\"",
    "\"a\"\"b\"",
    "\"a,b\"",
    "\"a\nb\"",
    "\"open",
    "x\"y",
    "é",
    "\u0000",
    "\u202e",
    "(1,200.00)",
    "20' 6\"",
    "2024",
    "working",
    "failed",
    "pipe",
    "\t",
    ";",
    "'",
    "0x1F",
    "NaN",
    "Infinity",
    "١٢",
    "−5",
    "1 234",
    "99999999999999999999999999",
    ".",
    "-",
    "$",
    "1970-01-01T00:00",
    "00/00/0000"
  };

  @TempDir Path folder;

  private static String pick(SplittableRandom random, String... from) {
    return from[random.nextInt(from.length)];
  }

  private static String headings(SplittableRandom random, TableSchema table, char separator) {
    StringBuilder line = new StringBuilder();
    for (FieldSchema field : table.fields()) {
      if (field.required() || random.nextInt(3) > 0) {
        line.append(line.isEmpty() ? "" : String.valueOf(separator));
        line.append(
            field.synonyms().isEmpty() || random.nextBoolean()
                ? field.name()
                : field.synonyms().get(random.nextInt(field.synonyms().size())));
        line.append(random.nextInt(20) == 0 ? " (mm)" : "");
      }
    }
    return line.toString();
  }

  private static String file(SplittableRandom random) {
    TableSchema table = TableSchema.all().get(random.nextInt(TableSchema.all().size()));
    char separator = pick(random, ",", ",", ";", "\t", "|").charAt(0);
    String end = pick(random, "\n", "\r\n", "\r");
    StringBuilder text = new StringBuilder();
    String headings = headings(random, table, separator);
    text.append(random.nextInt(10) == 0 ? "A title" + end + end : "").append(headings).append(end);
    int width = headings.split(separator == '|' ? "\\|" : String.valueOf(separator), -1).length;
    for (int row = random.nextInt(30); row > 0; row--) {
      int cells = random.nextInt(8) > 0 ? width : random.nextInt(width + 3);
      for (int i = 0; i < cells; i++) {
        text.append(i == 0 ? "" : String.valueOf(separator)).append(pick(random, CELLS));
      }
      text.append(end);
    }
    return text.toString();
  }

  /** Checks what must hold of every file, and returns the number of rows read. */
  private static long check(Read read, String seed) {
    assertTrue(!read.reports().isEmpty(), seed);
    long counted = 0;
    long rows = 0;
    for (SheetReport report : read.reports()) {
      // The constructor of RowCounts has checked that the account adds up.
      counted += report.counts().used() + report.counts().changed();
      rows += report.counts().read();
      long reasons =
          report.findings().stream()
              .filter(finding -> finding.severity() == Severity.SET_ASIDE)
              .map(finding -> finding.origin().row())
              .distinct()
              .count();
      boolean isToldAtOnce =
          report.findings().stream()
              .anyMatch(f -> f.severity() == Severity.SET_ASIDE && f.origin().row() == 0);
      assertTrue(isToldAtOnce || reasons == report.counts().setAside(), seed + read.findings());
      for (Finding finding : report.findings()) {
        assertTrue(finding.message().endsWith("."), finding.message());
        assertTrue(finding.message().chars().noneMatch(Character::isISOControl), seed);
      }
    }
    boolean isPrices = read.reports().stream().anyMatch(report -> "prices".equals(report.table()));
    assertTrue(isPrices || counted == read.records().size(), seed);
    return rows;
  }

  @Test
  void generatedTablesLoseNoRow() throws IOException {
    long rows = 0;
    for (int seed = 0; seed < 1000; seed++) {
      String text = file(new SplittableRandom(seed));
      byte[] bytes =
          text.getBytes(seed % 5 == 0 ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8);
      rows += check(Read.bytes(folder, seed % 2 == 0 ? "x.csv" : "installs.csv", bytes), "" + seed);
    }
    assertTrue(rows > 8_000, "rows read: " + rows);
  }

  @Test
  void randomBytesCrashNothing() throws IOException {
    for (int seed = 0; seed < 400; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      byte[] bytes = new byte[random.nextInt(3000)];
      random.nextBytes(bytes);
      if (seed % 2 == 0) {
        for (int i = 0; i < bytes.length; i++) {
          bytes[i] = bytes[i] == 0 ? (byte) ',' : bytes[i];
        }
      }
      check(Read.bytes(folder, seed % 3 == 0 ? "sites.xlsx" : "sites.csv", bytes), "" + seed);
    }
  }

  @Test
  void damagedTextCrashesNothing() throws IOException {
    for (int seed = 0; seed < 400; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      byte[] bytes = file(random).getBytes(StandardCharsets.UTF_8);
      damage(random, bytes);
      check(Read.bytes(folder, "revisits.csv", bytes), "" + seed);
    }
  }

  @Test
  void damagedWorkbooksCrashNothing() throws IOException {
    byte[] whole = workbook();
    int readable = 0;
    for (int seed = 0; seed < 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      byte[] bytes = whole.clone();
      damage(random, bytes);
      if (seed % 10 == 0) {
        bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length));
      }
      readable += check(Read.bytes(folder, "installs.xlsx", bytes), "" + seed) > 0 ? 1 : 0;
    }
    assertTrue(readable > 0 && readable < 200, "readable: " + readable);
  }

  private static void damage(SplittableRandom random, byte[] bytes) {
    for (int i = 1 + random.nextInt(4); i > 0 && bytes.length > 0; i--) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
  }

  private static byte[] workbook() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet sheet = book.createSheet("installs");
      String[] headings = {"device_id", "site_id", "installed_on", "pipe_wall"};
      String[] values = {"D1", "S1", "2024-05-01", "dual"};
      for (int row = 0; row < 40; row++) {
        sheet.createRow(row);
        for (int i = 0; i < headings.length; i++) {
          sheet.getRow(row).createCell(i).setCellValue(row == 0 ? headings[i] : values[i]);
        }
      }
      book.write(bytes);
    }
    return bytes.toByteArray();
  }

  @Test
  void cellsOfEveryReportedRowComeBack() throws IOException {
    for (int seed = 0; seed < 300; seed++) {
      Path file = folder.resolve("installs.csv");
      Files.writeString(file, file(new SplittableRandom(seed)));
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
