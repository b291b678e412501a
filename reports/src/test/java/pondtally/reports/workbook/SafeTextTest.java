package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.HashSet;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeTextTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1",
        "-2",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "=cmd|' /C calc'!A0",
        "_x0041_",
        "_x000D_",
        "plain",
        "two\nlines",
        " leading and trailing ",
        "\uD83E\uDDAB beaver",
        "naïve – ñ 漢字"
      })
  void comesBackAsItWasWritten(String text) throws Exception {
    XSSFCell cell = roundTrip(text);
    assertEquals(CellType.STRING, cell.getCellType());
    assertEquals(text, cell.getStringCellValue());
    assertEquals(SafeText.looksLikeFormula(text), cell.getCellStyle().getQuotePrefixed());
  }

  @Test
  void whatAFileCannotHoldIsWrittenOut() throws Exception {
    assertEquals("a\\u0000b\\u0007c", roundTrip("a\u0000b\u0007c").getStringCellValue());
    assertEquals("x\\ud83dy", roundTrip("x\uD83Dy").getStringCellValue());
  }

  @Test
  void longTextIsShortenedAndSaysSo() throws Exception {
    String text = "word ".repeat(8_000);
    String kept = roundTrip(text).getStringCellValue();
    assertTrue(kept.length() <= SafeText.CELL_LIMIT);
    assertTrue(kept.endsWith("[shortened; the whole text is in the tables]"));
    assertTrue(text.startsWith(kept.substring(0, 32_000)));
    assertEquals(SafeText.CELL_LIMIT, SafeText.encoded("x".repeat(SafeText.CELL_LIMIT)).length());
    // Every character needs an escape of seven: cut between escapes, not within one.
    String returns = SafeText.encoded("\r".repeat(20_000));
    assertTrue(returns.startsWith("_x000D_".repeat(4_000)));
    assertTrue(returns.length() <= SafeText.CELL_LIMIT);
    assertFalse(returns.replace("_x000D_", "").contains("_x"));
  }

  @Test
  void sheetNamesAreAllowedAndDiffer() {
    Set<String> taken = new HashSet<>();
    assertEquals("North", SafeText.sheetName("North", taken));
    assertEquals("NORTH 2", SafeText.sheetName("NORTH", taken));
    assertEquals("a-b-c-d", SafeText.sheetName("a/b\\c?d", taken));
    assertEquals("History-", SafeText.sheetName("History", taken));
    String sixty = "Upper Quillwater and Lower Quillwater Landowners Association";
    assertEquals(31, SafeText.sheetName(sixty, taken).length());
    String second = SafeText.sheetName(sixty, taken);
    assertTrue(second.length() <= 31 && second.endsWith(" 2"), second);
    assertFalse(SafeText.sheetName("", taken).isBlank());
    assertFalse(SafeText.sheetName("'quoted'", taken).startsWith("'"));
  }

  private static XSSFCell roundTrip(String text) throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      SafeText.put(
          book.createSheet().createRow(0).createCell(0), text, new Styles(book), Format.TEXT);
      book.write(bytes);
    }
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()))) {
      return book.getSheetAt(0).getRow(0).getCell(0);
    }
  }
}
