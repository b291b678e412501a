package pondtally.sample;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.NumberToTextConverter;

/**
 * A sheet as it stands in a file, read without any of our own reading.
 *
 * @param lines cells as text by line, the heading line first, blank lines kept
 */
record RawSheet(List<List<String>> lines) {

  static RawSheet read(Path file, String sheet) throws IOException {
    return file.toString().endsWith(".xlsx") ? workbook(file, sheet) : csv(file);
  }

  List<String> headings() {
    return lines.get(0);
  }

  /** The cell of a row as a spreadsheet numbers it, empty where there is none. */
  String cell(int row, String heading) {
    List<String> line = lines.get(row - 1);
    int at = headings().indexOf(heading);
    return at < line.size() ? line.get(at) : "";
  }

  long filledRows() {
    return lines.stream()
        .skip(1)
        .filter(line -> line.stream().anyMatch(cell -> !cell.isEmpty()))
        .count();
  }

  private static RawSheet csv(Path file) throws IOException {
    String text = Files.readString(file, StandardCharsets.UTF_8).replaceFirst("^\uFEFF", "");
    CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();
    List<List<String>> lines = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      for (CSVRecord line : parser) {
        lines.add(line.toList());
      }
    }
    return new RawSheet(lines);
  }

  private static RawSheet workbook(Path file, String name) throws IOException {
    List<List<String>> lines = new ArrayList<>();
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      org.apache.poi.ss.usermodel.Sheet sheet = workbook.getSheet(name);
      for (int i = 0; i <= sheet.getLastRowNum(); i++) {
        lines.add(line(sheet.getRow(i)));
      }
    }
    return new RawSheet(lines);
  }

  private static List<String> line(org.apache.poi.ss.usermodel.Row row) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; row != null && i < row.getLastCellNum(); i++) {
      cells.add(text(row.getCell(i)));
    }
    return cells;
  }

  private static String text(org.apache.poi.ss.usermodel.Cell cell) {
    if (cell == null) {
      return "";
    }
    if (cell.getCellType() != CellType.NUMERIC) {
      return cell.getStringCellValue();
    }
    return DateUtil.isCellDateFormatted(cell)
        ? cell.getLocalDateTimeCellValue().toLocalDate().toString()
        : NumberToTextConverter.toText(cell.getNumericCellValue());
  }
}
