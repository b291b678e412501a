package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pondtally.record.Install;

/** Cells whose numbers a workbook shows as times, hundredths and dates. */
class NumberLookTest {

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "General|0.0625|",
        "0.00|0.0625|",
        "0.0\"h\"|1.5|",
        "#,##0.00 \"50%\"|0.5|",
        "[h]:mm|0.0625|1:30",
        "h:mm:ss|0.0625115740740741|1:30:01",
        "[h]:mm|1.5|36:00",
        "h:mm AM/PM|0.75|18:00",
        "[$-409]h:mm;@|0.25|6:00",
        "hh:mm|45413|2024-05-01",
        "yyyy-mm-dd hh:mm|45413.75|2024-05-01 18:00",
        "d-mmm|45413|2024-05-01",
        "mmm\\-yy|45413|2024-05-01",
        "0%|0.5|50%",
        "0.00%|0.125|12.5%",
      })
  void aFormatDecidesAsWhatANumberIsShown(String format, double number, String shown) {
    assertEquals(shown, NumberLook.of(200, format).text(number, false));
  }

  private Read read(String heading, String format, double number) throws IOException {
    Path file = folder.resolve("installs.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = book.createSheet("Installs");
      Row headings = sheet.createRow(0);
      Row row = sheet.createRow(1);
      List<String> names = List.of("device_id", "site_id", "installed_on", heading);
      List<String> cells = List.of("D1", "S1", "2024-05-01");
      for (int i = 0; i < names.size(); i++) {
        headings.createCell(i).setCellValue(names.get(i));
      }
      for (int i = 0; i < cells.size(); i++) {
        row.createCell(i).setCellValue(cells.get(i));
      }
      row.createCell(3).setCellValue(number);
      row.getCell(3).setCellStyle(book.createCellStyle());
      row.getCell(3).getCellStyle().setDataFormat(book.createDataFormat().getFormat(format));
      book.write(out);
    }
    return Read.file(file);
  }

  @Test
  void workingTimeOfAClockIsHoursAndIsTold() throws IOException {
    Read read = read("labor_hours", "[h]:mm", 0.0625);
    assertEquals(1.5, read.only(Install.class).laborHours());
    assertEquals(
        List.of("2 labor_hours changed unit-converted: \"1:30\" is read as 1.5 hours."),
        read.findings());
  }

  @Test
  void hundredthsAreNoAmount() throws IOException {
    Read read = read("install_cost_usd", "0%", 0.5);
    assertEquals(null, read.only(Install.class).installCostUsd());
    assertEquals(List.of("2 unknown-unit"), read.rules());
  }

  @ParameterizedTest
  @CsvSource({"1:30,1.5", "0:45,0.75", "12:00,12", "1:30:36,1.51", "2:15 h,2.25"})
  void clockTimesInTextAreHours(String cell, double hours) throws IOException {
    String head = "device_id,site_id,installed_on,labor_hours\n";
    Read read = Read.text(folder, "installs.csv", head + "D1,S1,2024-05-01," + cell + "\n");
    assertEquals(hours, read.only(Install.class).laborHours(), 1e-12);
    assertEquals(List.of("2 unit-converted"), read.rules());
  }

  @ParameterizedTest
  @CsvSource({"1:75,labor_hours", "1:30,pipe_length_ft", "1:30,install_cost_usd"})
  void otherColonsAreNoNumbers(String cell, String field) throws IOException {
    String head = "device_id,site_id,installed_on," + field + "\n";
    Read read = Read.text(folder, "installs.csv", head + "D1,S1,2024-05-01," + cell + "\n");
    assertEquals(List.of("2 unreadable-number"), read.rules());
  }

  @ParameterizedTest
  @CsvSource({"2023-05-09,1", "9-May,1", "May-09,1", "D-09,0", "May-9,0", "2023-05-40,0"})
  void anIdThatLooksLikeADateIsNoticed(String id, int notices) throws IOException {
    String text = "device_id,site_id,installed_on\n" + id + ",S1,2024-05-01\n";
    Read read = Read.text(folder, "installs.csv", text);
    assertEquals(id, read.only(Install.class).deviceId());
    assertEquals(notices, read.findings().size());
    assertEquals("1=1+0+0", read.counts());
  }
}
