package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.Office;
import pondtally.stats.PresentValue;

/**
 * Present values against a general-purpose spreadsheet: NPV, PV and PMT as LibreOffice has them.
 */
class PresentValueGateTest {

  private static final double[] RATES = {0, 0.001, 0.02, 0.03, 0.07, 0.125};
  private static final int[] YEARS = {1, 2, 10, 30};
  private static final double[] FLOWS = {-1814.29, 952.17, 938.55, -400, 922.36, 917.11};

  /** A formula, and what our own class says. */
  private record Check(String formula, double own) {}

  @TempDir private Path folder;

  private static List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    for (double rate : RATES) {
      for (int n : YEARS) {
        checks.add(new Check("-PV(%s,%s,1)".formatted(rate, n), PresentValue.uniform(rate, n)));
        checks.add(new Check("-PV(%s,%s,0,1)".formatted(rate, n), PresentValue.single(rate, n)));
        checks.add(
            new Check("-PMT(%s,%s,1)".formatted(rate, n), PresentValue.capitalRecovery(rate, n)));
        checks.add(
            new Check(
                "-PMT(%s,%s,3031.39)".formatted(rate, n),
                PresentValue.equivalentAnnual(3031.39, rate, n)));
      }
      StringBuilder later = new StringBuilder();
      for (int t = 1; t < FLOWS.length; t++) {
        later.append(',').append(FLOWS[t]);
      }
      checks.add(
          new Check(
              "%s+NPV(%s%s)".formatted(FLOWS[0], rate, later), PresentValue.net(rate, FLOWS)));
    }
    return checks;
  }

  @Test
  void factorsAndNetPresentValueAreThoseOfASpreadsheet() throws Exception {
    Office.needed();
    Path file = folder.resolve("factors.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet sheet = book.createSheet();
      for (Check check : checks()) {
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        row.createCell(0).setCellFormula(check.formula());
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
    Path there = Files.createDirectory(folder.resolve("office"));
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(Office.convert(file, "xlsx", there)))) {
      int at = 0;
      for (Check check : checks()) {
        double theirs = book.getSheetAt(0).getRow(at++).getCell(0).getNumericCellValue();
        assertEquals(theirs, check.own(), 1e-9 * Math.max(1, Math.abs(theirs)), check.formula());
      }
      assertEquals(RATES.length * (4 * YEARS.length + 1), at);
    }
  }
}
