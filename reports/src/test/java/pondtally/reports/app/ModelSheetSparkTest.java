package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.app.Job;
import pondtally.app.JobRequest;
import pondtally.app.JobResult;
import pondtally.reports.fixture.Office;
import pondtally.reports.table.TablePackage;
import pondtally.reports.workbook.ProgramWorkbook;
import pondtally.table.ResultPackage;

/**
 * The live model of the workbook: assumptions changed in its cells and computed anew by LibreOffice
 * give, to the cent, what the program itself computes when it is run with that rate, that horizon
 * and that damage.
 */
class ModelSheetSparkTest {

  private static final double HALF_A_CENT = 0.005;
  private static final String SHEET = "Benefit-cost model";

  /** Label in the sheet, and the column of {@code benefit_cost} that holds the same figure. */
  private static final Map<String, String> FIGURES =
      Map.of(
          "Net benefit, present value", "net_usd",
          "Cost a year, the same each year", "equivalent_annual_usd",
          "Net benefit a year, the same each year", "equivalent_annual_net_usd",
          "Cost, present value", "cost_usd",
          "Damage avoided, present value", "benefit_usd",
          "Damage avoided per dollar of cost", "ratio",
          "Year by whose end it has paid (discounted)", "payback_year",
          "Yearly damage at which it just pays", "break_even_damage_usd");

  private record Setting(double rate, int horizon, double damage) {}

  @TempDir private Path folder;

  private int runs;

  /** Twelve sites of equal yearly damage; devices fail, are mended, and some are replaced. */
  private Path program(Setting setting) throws IOException {
    Path program = Files.createDirectories(folder.resolve("program-" + runs++));
    Files.writeString(
        program.resolve("program.yaml"),
        "as_of: 2025-12-31\nbase_year: 2024\nresamples: 100\ndiscount_rate: %s\nhorizon_years: %s\n"
            .formatted(setting.rate(), setting.horizon()));
    StringBuilder sites = new StringBuilder("site_id,damage_cost_per_year_before_usd\n");
    StringBuilder installs = new StringBuilder("device_id,site_id,installed_on,labor_hours\n");
    StringBuilder materials =
        new StringBuilder("device_id,item,quantity,total_cost_usd,purchased_on\n");
    StringBuilder visits =
        new StringBuilder("device_id,visited_on,condition,action,hours,cost_usd\n");
    for (int i = 1; i <= 12; i++) {
      sites.append("S%s,%s%n".formatted(i, setting.damage()));
      installs.append("D%s,S%s,2018-0%s-15,%s%n".formatted(i, i, 1 + i % 8, 6 + i));
      materials.append("D%s,pipe,1,%s.37,2018-01-10%n".formatted(i, 400 + 31 * i));
      for (int year = 2019; year <= 2025; year++) {
        boolean failed = (i * 7 + year) % 9 == 0;
        visits.append(
            "D%s,%s-05-1%s,%s,%s,%s,%s%n"
                .formatted(
                    i,
                    year,
                    i % 10,
                    failed ? "failed" : "working",
                    failed ? (i % 3 == 0 ? "replaced" : "repaired") : "",
                    failed ? 5 : 1.5,
                    failed ? 83.11 : ""));
      }
    }
    Files.writeString(program.resolve("sites.csv"), sites);
    Files.writeString(program.resolve("installs.csv"), installs);
    Files.writeString(program.resolve("materials.csv"), materials);
    Files.writeString(program.resolve("revisits.csv"), visits);
    return program;
  }

  private TablePackage run(Setting setting) throws IOException {
    Path program = program(setting);
    JobResult result =
        Job.run(
            new JobRequest(
                program,
                (int) LocalDate.of(2026, 2, 1).toEpochDay(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                2));
    Path tables = Files.createDirectory(program.resolve("tables"));
    ResultPackage.write(tables, result.tables(), result.facts());
    return TablePackage.open(tables);
  }

  /** The program's own figures at a setting, as texts. */
  private Map<String, String> computed(Setting setting) throws IOException {
    Map<String, String> figures = new TreeMap<>();
    run(setting).table("benefit_cost").orElseThrow().rows().stream()
        .filter(row -> row.text("grouping").equals("all") && row.text("basis").equals("projected"))
        .filter(row -> row.number("discount_rate").orElseThrow() == setting.rate())
        .forEach(row -> FIGURES.forEach((label, column) -> figures.put(label, row.text(column))));
    return figures;
  }

  /** The workbook's figures after its cells are changed and computed anew. */
  private Map<String, String> recalculated(Path workbook, Setting setting) throws Exception {
    Path changed = folder.resolve("changed-" + runs + ".xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
      set(book, "Model_discount_rate", setting.rate());
      set(book, "Model_horizon_years", setting.horizon());
      set(book, "Model_damage_usd", setting.damage());
      try (OutputStream out = Files.newOutputStream(changed)) {
        book.write(out);
      }
    }
    Path there = Files.createDirectories(folder.resolve("office-" + runs));
    try (XSSFWorkbook book =
        new XSSFWorkbook(Files.newInputStream(Office.convert(changed, "xlsx", there)))) {
      return figures(book.getSheet(SHEET));
    }
  }

  private static void set(XSSFWorkbook book, String name, double value) {
    Name named = book.getName(name);
    CellReference place = new CellReference(named.getRefersToFormula());
    Cell cell = book.getSheet(SHEET).getRow(place.getRow()).getCell(place.getCol());
    assertEquals(CellType.NUMERIC, cell.getCellType(), name + " is to be typed over");
    cell.setCellValue(value);
  }

  private static Map<String, String> figures(Sheet sheet) {
    Map<String, String> figures = new TreeMap<>();
    for (Row row : sheet) {
      Cell label = row.getCell(0);
      if (label != null
          && label.getCellType() == CellType.STRING
          && FIGURES.containsKey(label.getStringCellValue())) {
        Cell cell = row.getCell(1);
        assertEquals(CellType.FORMULA, cell.getCellType(), label.getStringCellValue());
        figures.put(
            label.getStringCellValue(),
            cell.getCachedFormulaResultType() == CellType.NUMERIC
                ? Double.toString(cell.getNumericCellValue())
                : "");
      }
    }
    return figures;
  }

  @Test
  void aChangedAssumptionGivesWhatTheProgramComputes() throws Exception {
    Office.needed();
    Path workbook = folder.resolve("program.xlsx");
    ProgramWorkbook.write(run(new Setting(0.07, 10, 600)), workbook);
    for (Setting setting :
        new Setting[] {
          new Setting(0.07, 10, 600),
          new Setting(0, 25, 600),
          new Setting(0.12, 30, 431.19),
          new Setting(0.05, 7, 9.5),
        }) {
      Map<String, String> program = computed(setting);
      Map<String, String> sheet = recalculated(workbook, setting);
      assertEquals(FIGURES.keySet(), sheet.keySet());
      // At the last setting it never pays, so that a figure that is empty is compared too.
      assertEquals(
          setting.damage() < 10, program.get("Net benefit, present value").startsWith("-"));
      for (String label : FIGURES.keySet()) {
        String what = String.format(Locale.ROOT, "%s at %s", label, setting);
        assertEquals(program.get(label).isEmpty(), sheet.get(label).isEmpty(), what);
        if (!program.get(label).isEmpty()) {
          assertEquals(
              Double.parseDouble(program.get(label)),
              Double.parseDouble(sheet.get(label)),
              HALF_A_CENT,
              what);
        }
      }
    }
  }
}
