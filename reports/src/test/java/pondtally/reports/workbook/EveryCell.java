package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;
import pondtally.reports.view.Setting;

/**
 * Looks up every number of a workbook: the plan of its sheet names table and column, the words in
 * its line are the key, and all numbers of the line that come from a table have to stand in one row
 * of it that has that key.
 */
public final class EveryCell {

  private final TablePackage tables;
  private final TreeSet<String> wrong = new TreeSet<>();
  private int lookedUp;
  private final Map<String, Integer> ofNoTable = new TreeMap<>();

  private EveryCell(TablePackage tables) {
    this.tables = tables;
  }

  /** Fails where a number is not in its cell; returns how many were looked up. */
  public static int ofProgram(TablePackage tables, Path workbook) throws IOException {
    return check(tables, ProgramWorkbook.plan(tables, Book.LINES_A_SHEET), workbook);
  }

  /** The same for the workbook of a comparison. */
  public static int ofChanges(TablePackage tables, Path workbook) throws IOException {
    return check(tables, ChangesWorkbook.plan(tables), workbook);
  }

  static Set<String> wrong(TablePackage tables, Book plan, Path workbook) throws IOException {
    return walk(tables, plan, workbook).wrong;
  }

  private static int check(TablePackage tables, Book plan, Path workbook) throws IOException {
    EveryCell walked = walk(tables, plan, workbook);
    assertEquals(Set.of(), walked.wrong, workbook.toString());
    assertEquals(Map.of(), walked.ofNoTable, "numbers that are neither a formula nor in a table");
    return walked.lookedUp;
  }

  private static EveryCell walk(TablePackage tables, Book plan, Path workbook) throws IOException {
    EveryCell walk = new EveryCell(tables);
    try (XSSFWorkbook book = new XSSFWorkbook(workbook.toFile())) {
      plan.places().forEach(place -> walk.sheet(book, place));
      return walk;
    } catch (InvalidFormatException e) {
      throw new IOException(e);
    }
  }

  private void sheet(XSSFWorkbook book, Place place) {
    Map<String, List<TableColumn>> bySource =
        place.sheet().columns().stream().collect(Collectors.groupingBy(c -> c.source() + rowOf(c)));
    for (int i = 0; i < place.sheet().lines().size(); i++) {
      var cells = book.getSheet(place.sheet().name()).getRow(place.firstRow() + i);
      Line line = place.sheet().lines().get(i);
      for (Map.Entry<String, List<TableColumn>> source : bySource.entrySet()) {
        Map<TableColumn, OptionalDouble> numbers = new java.util.LinkedHashMap<>();
        for (TableColumn column : source.getValue()) {
          Cell cell = cells.getCell(place.columnIndex(column.column()));
          if (cell.getCellType() == CellType.NUMERIC && !DateUtil.isCellDateFormatted(cell)) {
            numbers.put(column, OptionalDouble.of(cell.getNumericCellValue()));
          }
        }
        if (source.getValue().get(0).derived()) {
          numbers.keySet().stream()
              .filter(column -> column.formula() == null)
              .filter(c -> !isElsewhere(c, line, numbers.get(c).getAsDouble()))
              .forEach(
                  c -> ofNoTable.merge(place.sheet().name() + ": " + c.column(), 1, Integer::sum));
        } else if (!numbers.isEmpty()) {
          lookedUp += numbers.size();
          lookUp(place, place.sheet().name() + " " + (cells.getRowNum() + 1), line, numbers);
        }
      }
    }
  }

  /** A claim stands in a row of its own by its evidence; a setting is a fact of the run. */
  private boolean isElsewhere(TableColumn column, Line line, double shown) {
    if (column.column().startsWith("claim ")) {
      return tables.table("removals_avoided").orElseThrow().rows().stream()
          .filter(row -> row.text("grouping").equals("all"))
          .filter(row -> row.text("year").equals(line.text("year")))
          .filter(row -> row.text("evidence").equals(column.column().substring(6)))
          .anyMatch(row -> row.number("avoided_claimed").orElse(Double.NaN) == shown);
    }
    return column.column().equals("value")
        && Setting.all(tables).stream()
            .filter(setting -> setting.label().equals(line.text("label")))
            .anyMatch(setting -> Double.parseDouble(setting.value()) == shown);
  }

  /** Tells apart the columns of a line that come from several rows of one table. */
  private static String rowOf(TableColumn column) {
    // The points of a step: the age of one row with the share of the row before.
    if (column.column().equals("time_days") && column.source().equals("survival_curves")) {
      return " age";
    }
    int dot = column.column().indexOf('.');
    return dot < 0 ? "" : " " + column.column().substring(0, dot);
  }

  private void lookUp(
      Place place, String where, Line line, Map<TableColumn, OptionalDouble> numbers) {
    String source = numbers.keySet().iterator().next().source();
    List<TableColumn> key =
        place.sheet().columns().stream()
            .filter(column -> column.source().equals(source) && !isNumber(column))
            .filter(column -> line.text(column.column()).isEmpty() || !isOurs(column, line))
            .toList();
    boolean found =
        tables.table(source).orElseThrow().rows().stream()
            .filter(row -> key.stream().allMatch(c -> same(row, c, line)))
            .anyMatch(
                row ->
                    numbers.entrySet().stream()
                        .allMatch(n -> holds(row, n.getKey(), n.getValue().getAsDouble())));
    if (!found && !isEndOfCurve(source, line, numbers)) {
      wrong.add(where + " of " + source + ": " + numbers.values());
    }
  }

  /** A curve starts with all at age 0 and is drawn to the last age that it is supported at. */
  private boolean isEndOfCurve(String source, Line line, Map<TableColumn, OptionalDouble> numbers) {
    return source.equals("survival_curves")
        && numbers.entrySet().stream()
            .allMatch(
                number -> {
                  boolean isAge = number.getKey().column().equals("time_days");
                  double value = number.getValue().getAsDouble();
                  return isAge ? value == 0 || isSupported(line, value) : value == 1;
                });
  }

  private boolean isSupported(Line line, double age) {
    return tables.table("survival_summary").orElseThrow().rows().stream()
        .filter(row -> row.text("grouping").equals(line.text("grouping")))
        .filter(row -> row.text("group").equals(line.text("group")))
        .anyMatch(row -> row.number("supported_days").orElse(-1) == age);
  }

  /** Words of our own for a code. */
  private boolean isOurs(TableColumn column, Line line) {
    return tables.table(column.source()).orElseThrow().rows().stream()
        .noneMatch(row -> row.text(column.sourceColumn()).equals(line.text(column.column())));
  }

  private boolean isNumber(TableColumn column) {
    return field(column).type().equals("number") || field(column).type().equals("integer");
  }

  private Field field(TableColumn column) {
    return tables.table(column.source()).orElseThrow().fields().stream()
        .filter(f -> f.name().equals(column.sourceColumn()))
        .findFirst()
        .orElseThrow();
  }

  private static boolean same(Row row, TableColumn column, Line line) {
    return row.text(column.sourceColumn()).equals(line.text(column.column()));
  }

  private static boolean holds(Row row, TableColumn column, double shown) {
    OptionalDouble held = row.number(column.sourceColumn());
    if (held.isEmpty()) {
      // a year or a code of digits
      return row.text(column.sourceColumn()).equals(Long.toString(Math.round(shown)));
    }
    return Math.abs(held.getAsDouble() - shown) <= 1e-12 * Math.max(1, Math.abs(shown));
  }
}
