package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pondtally.check.RowCounts;
import pondtally.check.SheetReport;
import pondtally.record.Code;
import pondtally.record.Sourced;

/**
 * Partner files as they really come. Each folder under {@code awkward} holds the files, the {@code
 * columns.yaml} that a coordinator wrote for them, and in {@code expected.txt} every record, change
 * and message that must come of them. A {@code *.book} is made into a workbook: {@code == name}
 * begins a sheet, cells are split at tabs, and plain numbers are numbers.
 */
class AwkwardFilesTest {

  private static final String EXPECTED = "expected.txt";

  @TempDir Path program;

  static List<String> folders() throws IOException {
    try (Stream<Path> folders = Files.list(root())) {
      return folders.map(folder -> folder.getFileName().toString()).sorted().toList();
    }
  }

  private static Path root() {
    try {
      return Path.of(AwkwardFilesTest.class.getResource("/awkward").toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("folders")
  void everyRecordChangeAndMessageIsAsExpected(String name) throws IOException {
    Path folder = root().resolve(name);
    copy(folder, program.resolve("north"));
    List<String> lines = new ArrayList<>();
    for (InputFile file : ProgramFolder.files(program)) {
      List<Sourced> records = new ArrayList<>();
      List<SheetReport> reports = PartnerFileReader.read(file, Read.SETTINGS, records::add);
      reports.forEach(report -> lines.add(account(file, report)));
      records.forEach(record -> lines.add("  " + words(record)));
      new Read(reports, records).findings().forEach(finding -> lines.add("  ! " + finding));
    }
    assertEquals(Files.readString(folder.resolve(EXPECTED)), String.join("\n", lines) + "\n", name);
  }

  private static String account(InputFile file, SheetReport report) {
    RowCounts counts = report.counts();
    assertEquals(counts.read(), counts.used() + counts.changed() + counts.setAside());
    return "%s%s, %s of %s: %d read = %d used + %d changed + %d set aside"
        .formatted(
            file.path(),
            report.sheetName().isEmpty() ? "" : " " + report.sheetName(),
            report.table(),
            file.partner(),
            counts.read(),
            counts.used(),
            counts.changed(),
            counts.setAside());
  }

  private static String words(Sourced sourced) {
    Object row = sourced;
    List<String> words = new ArrayList<>();
    for (RecordComponent component : row.getClass().getRecordComponents()) {
      Object value = value(component, row);
      if (value != null && !component.getName().equals("origin")) {
        words.add(component.getName() + " " + shown(component, value));
      }
    }
    return "%s %d: %s"
        .formatted(
            row.getClass().getSimpleName(), sourced.origin().row(), String.join(", ", words));
  }

  private static Object value(RecordComponent component, Object row) {
    try {
      return component.getAccessor().invoke(row);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String shown(RecordComponent component, Object value) {
    boolean isDay =
        value instanceof Integer && component.getName().matches(".*(On|From|Until)|date");
    if (isDay) {
      return LocalDate.ofEpochDay((Integer) value).toString();
    }
    return value instanceof Code code ? code.code() : value.toString();
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      files.filter(Files::isRegularFile).forEach(file -> copy(from, file, to));
    }
  }

  private static void copy(Path from, Path file, Path to) {
    String name = from.relativize(file).toString();
    Path target = to.resolve(name);
    try {
      Files.createDirectories(target.getParent());
      if (name.endsWith(".book")) {
        book(file, to.resolve(name.replace(".book", ".xlsx")));
      } else if (!name.equals(EXPECTED)) {
        Files.copy(file, target);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void book(Path text, Path target) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(target)) {
      Sheet sheet = null;
      int at = 0;
      for (String line : Files.readAllLines(text)) {
        if (line.startsWith("== ")) {
          sheet = book.createSheet(line.substring(3));
          at = 0;
        } else {
          fill(sheet.createRow(at++), line.split("\t", -1));
        }
      }
      book.write(out);
    }
  }

  private static void fill(Row row, String[] cells) {
    for (int i = 0; i < cells.length; i++) {
      if (cells[i].matches("-?\\d+(\\.\\d+)?")) {
        row.createCell(i).setCellValue(Double.parseDouble(cells[i]));
      } else if (!cells[i].isEmpty()) {
        row.createCell(i).setCellValue(cells[i]);
      }
    }
  }
}
