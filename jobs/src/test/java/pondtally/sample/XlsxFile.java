package pondtally.sample;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes a workbook whose bytes depend on its cells only: fixed properties, entries in order of
 * name at a fixed time.
 */
final class XlsxFile {
  private static final Instant WRITTEN = Instant.parse("2026-01-15T09:00:00Z");
  private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(2026, 1, 15, 9, 0);

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final CellStyle heading = workbook.createCellStyle();
  private final CellStyle day = workbook.createCellStyle();

  private XlsxFile() {
    Font bold = workbook.createFont();
    bold.setBold(true);
    heading.setFont(bold);
    day.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
  }

  static void write(Path path, List<Sheet> sheets) {
    XlsxFile file = new XlsxFile();
    try (XSSFWorkbook workbook = file.workbook) {
      sheets.forEach(file::add);
      CoreProperties properties = workbook.getProperties().getCoreProperties();
      properties.setCreator(sheets.get(0).partner().folder);
      properties.setCreated(Optional.of(Date.from(WRITTEN)));
      properties.setModified(Optional.of(Date.from(WRITTEN)));
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      Files.createDirectories(path.getParent());
      Files.write(path, inOrder(bytes.toByteArray()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void add(Sheet sheet) {
    XSSFSheet target = workbook.createSheet(sheet.name());
    XSSFRow headings = target.createRow(0);
    for (int i = 0; i < sheet.columns().size(); i++) {
      XSSFCell cell = headings.createCell(i);
      cell.setCellValue(sheet.columns().get(i).heading());
      cell.setCellStyle(heading);
      target.setColumnWidth(i, 256 * Math.max(11, sheet.columns().get(i).heading().length() + 2));
    }
    target.createFreezePane(0, 1);
    for (Row row : sheet.rows()) {
      if (!row.values().isEmpty()) {
        fill(target.createRow(sheet.number(row) - 1), sheet, row);
      }
    }
  }

  private void fill(XSSFRow target, Sheet sheet, Row row) {
    for (int i = 0; i < sheet.columns().size(); i++) {
      Cell value = sheet.columns().get(i).cell(row);
      if (value.isBlank()) {
        continue;
      }
      XSSFCell cell = target.createCell(i);
      if (value instanceof Cell.Amount number) {
        cell.setCellValue(number.number().doubleValue());
      } else if (value instanceof Cell.Day date) {
        cell.setCellValue(date.day());
        cell.setCellStyle(day);
      } else {
        cell.setCellValue(value.text());
      }
    }
  }

  private static byte[] inOrder(byte[] zip) throws IOException {
    Map<String, byte[]> entries = entries(zip);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        ZipEntry header = new ZipEntry(entry.getKey());
        header.setTimeLocal(ENTRY_TIME);
        out.putNextEntry(header);
        out.write(entry.getValue());
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  /** The parts of a workbook by name, uncompressed. */
  static Map<String, byte[]> entries(byte[] zip) throws IOException {
    Map<String, byte[]> entries = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        entries.put(entry.getName(), in.readAllBytes());
      }
    }
    return entries;
  }
}
