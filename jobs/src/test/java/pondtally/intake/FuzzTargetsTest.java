package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fuzz targets on inputs that are known: what they start from, and what they once found. */
@Tag("reliability")
class FuzzTargetsTest {

  @TempDir Path folder;

  private static List<byte[]> texts() throws IOException {
    List<byte[]> texts = new ArrayList<>();
    for (String cell : HostileFile.CELLS) {
      texts.add(cell.getBytes(StandardCharsets.UTF_8));
    }
    new ObjectMapper()
        .readTree(FuzzTargetsTest.class.getResourceAsStream("/corpora/naughty-strings/blns.json"))
        .forEach(node -> texts.add(node.asText().getBytes(StandardCharsets.UTF_8)));
    return texts;
  }

  @Test
  void datesNumbersAndUnitsHold() throws IOException {
    for (byte[] text : texts()) {
      FuzzDates.fuzzerTestOneInput(text);
      FuzzNumbers.fuzzerTestOneInput(text);
      FuzzUnits.fuzzerTestOneInput(text);
    }
  }

  @Test
  void filesHold() throws IOException {
    for (byte[] text : texts()) {
      FuzzCsv.fuzzerTestOneInput(text);
    }
    byte[] sheet = ("\0" + FuzzXlsx.sheet()).getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < 100; i++) {
      FuzzXlsx.fuzzerTestOneInput(HostileFile.damaged(new SplittableRandom(i), sheet.clone()));
    }
  }

  /** The workbook that the target starts from is a sound one, or it would search in vain. */
  @Test
  void theSoundWorkbookIsRead() throws IOException {
    byte[] sheet = FuzzXlsx.sheet().getBytes(StandardCharsets.UTF_8);
    Read read = Read.bytes(folder, "x.xlsx", FuzzXlsx.book("xl/worksheets/sheet1.xml", sheet));
    assertEquals("1=1+0+0", read.counts());
    assertEquals(List.of(), read.findings());
  }

  /** Found by damaged workbooks: one row number, or cell, twice. */
  @Test
  void whatStandsTwiceInAWorkbookIsRefused() throws IOException {
    String sheet = FuzzXlsx.sheet();
    String row = sheet.substring(sheet.indexOf("<row r=\"2\""), sheet.indexOf("</sheetData>"));
    assertEquals(
        List.of(
            "0 - set-aside file-unreadable: Reading stopped after row 2: it is broken (\"row 2 stands"
                + " below row 2\"). Rows below it are not counted. Save the file anew and run again."),
        findings(sheet.replace("</sheetData>", row + "</sheetData>")));
    assertEquals(
        List.of(
            "0 - set-aside file-unreadable: Reading stopped after row 1: it is broken (\"cell A2 stands"
                + " there twice\"). Rows below it are not counted. Save the file anew and run again."),
        findings(sheet.replace("r=\"B2\"", "r=\"A2\"")));
  }

  private List<String> findings(String sheet) throws IOException {
    byte[] bytes =
        FuzzXlsx.book("xl/worksheets/sheet1.xml", sheet.getBytes(StandardCharsets.UTF_8));
    return Read.bytes(folder, "x.xlsx", bytes).findings();
  }

  /** Found by fuzzing: a number behind a mark of its column's unit was read without a word. */
  @Test
  void aNumberBehindAMarkIsTold() {
    FuzzUnits.fuzzerTestOneInput("'9'".getBytes(StandardCharsets.UTF_8));
    FuzzUnits.fuzzerTestOneInput("'9".getBytes(StandardCharsets.UTF_8));
  }

  /** Found by the target of units: a plus sign says nothing new of a number. */
  @Test
  void aPlusSignIsNoChange() {
    FuzzUnits.fuzzerTestOneInput("+5'".getBytes(StandardCharsets.UTF_8));
    FuzzUnits.fuzzerTestOneInput("\u0004+5'".getBytes(StandardCharsets.UTF_8));
  }

  /** Found by the target of units: separators of old terminals passed for white space. */
  @Test
  void charactersThatNobodySeesAreNoWhiteSpace() {
    FuzzUnits.fuzzerTestOneInput("7\u001d\u001d\u001dfeet".getBytes(StandardCharsets.UTF_8));
    FuzzUnits.fuzzerTestOneInput("7\u001fft".getBytes(StandardCharsets.UTF_8));
    FuzzUnits.fuzzerTestOneInput("7\nft".getBytes(StandardCharsets.UTF_8));
    FuzzUnits.fuzzerTestOneInput("7     f.t...".getBytes(StandardCharsets.UTF_8));
  }

  /** Found by the target of units: hundreds of digits were left out without a word. */
  @Test
  void aNumberWithoutEndIsReported() {
    FuzzUnits.fuzzerTestOneInput(("+8." + "3".repeat(400)).getBytes(StandardCharsets.UTF_8));
    FuzzUnits.fuzzerTestOneInput(("8." + "3".repeat(400)).getBytes(StandardCharsets.UTF_8));
    FuzzUnits.fuzzerTestOneInput(("8" + ",333".repeat(200)).getBytes(StandardCharsets.UTF_8));
  }

  /** A check that cannot fail finds nothing. */
  @Test
  void aValueChangedInSilenceIsFound() {
    assertThrows(AssertionError.class, () -> HostileCheck.requireSame("12", 13.0));
    assertThrows(AssertionError.class, () -> HostileCheck.requireSame("2024-05-01", 19843));
    HostileCheck.requireSame("12", 12.0);
    HostileCheck.requireSame("2024-05-01", 19844);
  }
}
