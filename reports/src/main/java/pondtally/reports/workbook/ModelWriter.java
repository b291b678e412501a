package pondtally.reports.workbook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import pondtally.reports.table.Row;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;

/** Writes the live model: notes, assumptions, figures, years. */
final class ModelWriter {

  private static final List<String> YEAR_HEADINGS =
      List.of(
          Messages.of("common.Year"),
          Messages.of("workbook.ModelWriter.share-of-the-year-it-works"),
          Messages.of("common.Visits"),
          Messages.of("workbook.ModelWriter.repairs"),
          Messages.of("workbook.ModelWriter.replacements"),
          Messages.of("workbook.ModelWriter.present-value-of-1-usd-0"),
          Messages.of("workbook.ModelWriter.damage-avoided-usd"),
          Messages.of("workbook.ModelWriter.cost-usd"),
          Messages.of("workbook.ModelWriter.net-so-far-present-value"),
          Messages.of("workbook.ModelWriter.paid-by-then"));

  /** Columns of the years that figures call. */
  private static final Map<String, Integer> YEAR_COLUMNS =
      Map.of("share", 1, "factor", 5, "benefit", 6, "cost", 7, "paid", 9);

  private static final int NOTE_WIDTH = 120;
  private static final double HIGHEST_RATE = 0.2;

  private final XSSFSheet sheet;
  private final Styles styles;
  private final ModelSheet model;
  private final Map<String, String> figureCells = new LinkedHashMap<>();
  private int at;
  private int firstYear;

  ModelWriter(XSSFSheet sheet, Styles styles, ModelSheet model) {
    this.sheet = sheet;
    this.styles = styles;
    this.model = model;
  }

  void write() {
    widths();
    put(text(ModelSheet.TITLE), styles.title());
    for (String note : ModelSheet.NOTES) {
      Widths.wrapped(note, NOTE_WIDTH).forEach(line -> put(text(line), styles.note()));
    }
    at++;
    headings(
        List.of(
            Messages.of("common.Assumption"),
            Messages.of("common.Value"),
            Messages.of("common.Unit")));
    ModelSheet.ASSUMPTIONS.forEach(this::assumption);
    at++;
    headings(
        List.of(
            Messages.of("common.Figure"),
            Messages.of("common.Value"),
            Messages.of("common.Unit"),
            Messages.of("workbook.ModelWriter.as-this-run-computed-it")));
    int figures = at;
    firstYear = figures + ModelFigure.ALL.size() + 2;
    for (int i = 0; i < ModelFigure.ALL.size(); i++) {
      figureCells.put(ModelFigure.ALL.get(i).column(), "$B$" + (figures + i + 1));
    }
    ModelFigure.ALL.forEach(this::figure);
    at++;
    headings(YEAR_HEADINGS);
    year(0, null);
    for (Row row : model.years()) {
      year(Integer.parseInt(row.text("year")), Line.of(row));
    }
  }

  private void widths() {
    int[] widths = {44, 16, 16, 24, 14, 20, 16, 16, 18, 14};
    for (int i = 0; i < widths.length; i++) {
      sheet.setColumnWidth(i, widths[i] * 256);
    }
  }

  private static String text(String words) {
    return SafeText.encoded(words);
  }

  private void put(String words, CellStyle style) {
    Cell cell = sheet.createRow(at++).createCell(0);
    cell.setCellValue(words);
    cell.setCellStyle(style);
  }

  private void headings(List<String> words) {
    XSSFRow row = sheet.createRow(at++);
    for (int i = 0; i < words.size(); i++) {
      Cell cell = row.createCell(i);
      cell.setCellValue(words.get(i));
      cell.setCellStyle(
          styles.header(
              i == 0 || words.get(i).equals(Messages.of("common.Unit"))
                  ? Format.TEXT
                  : Format.TWO));
    }
    row.setHeightInPoints(words.size() > 4 ? 42 : 16);
  }

  private void assumption(ModelSheet.Assumption assumption) {
    XSSFRow row = sheet.createRow(at);
    label(row, assumption.label());
    Cell value = row.createCell(1);
    value.setCellValue(number(assumption.column()));
    value.setCellStyle(styles.input(assumption.format()));
    unit(row, assumption.unit());
    Name name = sheet.getWorkbook().createName();
    name.setNameName(assumption.name());
    name.setRefersToFormula("'" + ModelSheet.NAME + "'!$B$" + (at + 1));
    allowed(assumption);
    at++;
  }

  private void allowed(ModelSheet.Assumption assumption) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    boolean whole = assumption.column().equals("horizon_years");
    String least = whole ? "1" : "0";
    String most = whole ? Integer.toString(model.years().size()) : "1000000000";
    if (assumption.column().equals("discount_rate")) {
      most = Double.toString(HIGHEST_RATE);
    }
    DataValidation rule =
        helper.createValidation(
            helper.createNumericConstraint(
                whole ? ValidationType.INTEGER : ValidationType.DECIMAL,
                OperatorType.BETWEEN,
                least,
                most),
            new CellRangeAddressList(at, at, 1, 1));
    rule.setShowErrorBox(true);
    rule.createErrorBox(
        assumption.label(),
        Messages.of(
            "workbook.ModelWriter.from-to",
            Map.of(
                "least",
                least,
                "most",
                most,
                "part",
                whole ? Messages.of("workbook.ModelWriter.whole-years") : ".")));
    sheet.addValidationData(rule);
  }

  private void figure(ModelFigure figure) {
    XSSFRow row = sheet.createRow(at++);
    label(row, figure.label());
    live(row, 1, filled(figure.formula()), figure.format(), number(figure.column()));
    unit(row, figure.unit());
    Cell own = row.createCell(3);
    OptionalDouble known = Line.of(model.row()).number(figure.column());
    if (known.isPresent()) {
      own.setCellValue(known.getAsDouble());
      own.setCellStyle(styles.number(figure.format()));
    } else {
      boolean never = figure.column().equals("payback_year");
      row.getCell(1)
          .setCellValue(
              never
                  ? Messages.of("workbook.ModelWriter.not-within-the-horizon")
                  : Formula.NOT_KNOWN);
      own.setCellValue(
          never ? Messages.of("workbook.ModelWriter.not-within-the-horizon") : Formula.NOT_KNOWN);
      own.setCellStyle(styles.unknown(figure.format()));
    }
  }

  private String filled(String formula) {
    String filled = formula;
    int last = firstYear + 1 + model.years().size();
    for (Map.Entry<String, Integer> column : YEAR_COLUMNS.entrySet()) {
      String letter = CellReference.convertNumToColString(column.getValue());
      String range = "$%s$%s:$%s$%s".formatted(letter, firstYear + 1, letter, last);
      filled = filled.replace("{" + column.getKey() + "}", range);
    }
    for (Map.Entry<String, String> cell : figureCells.entrySet()) {
      filled = filled.replace("[" + cell.getKey() + "]", cell.getValue());
    }
    return filled;
  }

  /** A year's row: what is expected of the device from the table, dollars as formulas. */
  private void year(int year, Line expected) {
    XSSFRow row = sheet.createRow(at++);
    int n = at;
    constant(row, 0, year, Format.LABEL);
    double[] counts = new double[4];
    String[] columns = {"working_share", "visits", "repairs", "replacements"};
    for (int i = 0; i < columns.length; i++) {
      counts[i] = expected == null ? 0 : expected.number(columns[i]).orElse(0);
      constant(row, i + 1, counts[i], Format.FIVE);
    }
    ModelYears.Year own = years().get(year);
    live(
        row,
        5,
        "IF(A%s<=Model_horizon_years,(1+Model_discount_rate)^-A%s,0)".formatted(n, n),
        Format.FIVE,
        own.factor());
    live(row, 6, "Model_damage_usd*B" + n, Format.TWO, own.benefit());
    String cost =
        year == 0
            ? "Model_build_usd"
            : "(C%s-D%s-E%s)*Model_visit_usd+D%s*Model_repair_usd+E%s*Model_replacement_usd"
                .replace("%s", Integer.toString(n));
    live(row, 7, cost, Format.TWO, own.cost());
    String before = year == 0 ? "" : "I" + (n - 1) + "+";
    live(row, 8, before + "F%s*(G%s-H%s)".replace("%s", "" + n), Format.TWO, own.netSoFar());
    Cell paid =
        live(
            row,
            9,
            "IF(AND(A%s<=Model_horizon_years,I%s>=0),A%s,\"\")".replace("%s", "" + n),
            Format.LABEL,
            year);
    if (!own.paid()) {
      paid.setCellValue("");
    }
  }

  private List<ModelYears.Year> years() {
    return ModelYears.of(model);
  }

  private double number(String column) {
    return Line.of(model.row()).number(column).orElse(0);
  }

  private void label(XSSFRow row, String words) {
    Cell cell = row.createCell(0);
    cell.setCellValue(words);
    cell.setCellStyle(styles.number(Format.TEXT));
  }

  private void unit(XSSFRow row, String words) {
    Cell cell = row.createCell(2);
    cell.setCellValue(words);
    cell.setCellStyle(styles.number(Format.TEXT));
  }

  private void constant(XSSFRow row, int column, double value, Format format) {
    Cell cell = row.createCell(column);
    cell.setCellValue(value);
    cell.setCellStyle(styles.number(format));
  }

  private Cell live(XSSFRow row, int column, String formula, Format format, double value) {
    Cell cell = row.createCell(column);
    cell.setCellFormula(formula);
    cell.setCellValue(value);
    cell.setCellStyle(styles.number(format));
    return cell;
  }
}
