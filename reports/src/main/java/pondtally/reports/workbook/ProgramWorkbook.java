package pondtally.reports.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Summary;

/**
 * The program's workbook: a summary in sentences, one sheet a subject with live formulas and native
 * charts, the checks, methods, settings and fields.
 */
public final class ProgramWorkbook {

  /** Stands for the day of making where the tables name no data cut. */
  private static final LocalDate NO_DATE = LocalDate.of(2000, 1, 1);

  private ProgramWorkbook() {}

  /**
   * Writes the workbook.
   *
   * @param tables all that it is made from
   * @param file the {@code .xlsx} file to write; the same tables give the same bytes
   * @throws IOException when the file cannot be written
   */
  public static void write(TablePackage tables, Path file) throws IOException {
    write(tables, file, Book.LINES_A_SHEET);
  }

  static void write(TablePackage tables, Path file, int linesASheet) throws IOException {
    plan(tables, linesASheet).write(file);
  }

  /** Every sheet with the tables and columns that its cells are read from. */
  static Book plan(TablePackage tables, int linesASheet) {
    Book book = new Book(properties(tables), linesASheet);
    subjects(book, tables);
    OtherTables.addTo(book, tables);
    records(book, tables);
    book.addFirst(SummarySheet.of(tables, book.sheetNames()));
    return book;
  }

  private static void subjects(Book book, TablePackage tables) {
    book.when(tables, "wetland", FiveYearSheet::addTo);
    book.when(tables, "devices", StateSheets::states);
    book.when(tables, "failure_rates", RateSheets::watersheds);
    book.when(tables, "failure_rates", RateSheets::pipes);
    book.when(tables, "failure_rates", RateSheets::others);
    book.when(tables, "survival_summary", SurvivalSheets::summary);
    book.when(tables, "survival_summary", SurvivalSheets::undated);
    book.when(tables, "failure_causes", CauseSheets::causes);
    book.when(tables, "failure_causes", CauseSheets::byGroup);
    book.when(tables, "costs", CostSheets::byWatershed);
    book.when(tables, "costs", CostSheets::byYear);
    book.when(tables, "cost_effectiveness", UnitCostSheets::perProperty);
    book.when(tables, "cost_effectiveness", UnitCostSheets::all);
    book.when(tables, "benefit_cost", BenefitSheets::benefit);
    book.when(tables, "benefit_years", ModelSheet::addTo);
    book.when(tables, "sensitivity", BenefitSheets::sensitivity);
    book.when(tables, "wetland_value", BenefitSheets::wetlandValue);
    book.when(tables, "wetland", WetlandSheets::byWatershed);
    book.when(tables, "wetland", WetlandSheets::byYear);
    book.when(tables, "removals_avoided", RemovalSheet::addTo);
    book.when(tables, "continued_removals", RemovalSheet::continued);
    book.when(tables, "properties", PropertySheets::byType);
    book.when(tables, "properties", PropertySheets::byWatershed);
    book.when(tables, "funding", BenefitSheets::funding);
    book.when(tables, "funder_shares", ShareSheets::shares);
    book.when(tables, "season_forecast", SeasonSheets::forecast);
    book.when(tables, "season_forecast", SeasonSheets::byGroup);
    book.when(tables, "worklist", WorklistSheets::all);
    book.when(tables, "worklist", WorklistSheets::printed);
    book.when(tables, "buying_list", SeasonSheets::buying);
    book.when(tables, "visit_interval", IntervalSheets::best);
    book.when(tables, "visit_interval_curve", IntervalSheets::curve);
    book.when(tables, "requests", OfficeSheets::requests);
    book.when(tables, "lapses", OfficeSheets::lapses);
    book.when(tables, "program_expenses", OfficeSheets::expenses);
  }

  private static void records(Book book, TablePackage tables) {
    book.when(
        tables,
        "restated",
        (b, t) ->
            ChangeSheets.figures(
                b,
                t,
                "restated",
                Messages.of("workbook.ProgramWorkbook.published-before"),
                "published.table.all"));
    book.when(tables, "devices", StateSheets::devices);
    book.when(tables, "sites", StateSheets::sites);
    book.when(tables, "row_account", CheckSheets::account);
    book.when(tables, "data_issues", CheckSheets::issues);
    book.when(tables, "completeness", CheckSheets::completeness);
    book.when(tables, "survival_curves", SurvivalSheets::points);
    CheckSheets.methods(book, tables);
    SettingsSheet.addTo(book, tables);
    ProvenanceSheet.addTo(book, tables);
    CheckSheets.fields(book, tables);
  }

  private static BookProperties properties(TablePackage tables) {
    String asOf = tables.fact("as_of");
    LocalDate day = asOf.isEmpty() ? NO_DATE : LocalDate.parse(asOf);
    String cut =
        asOf.isEmpty()
            ? Messages.of("workbook.ProgramWorkbook.data-cut-not-known")
            : Messages.of("workbook.ProgramWorkbook.records-up-to", Map.of("asOf", asOf));
    String region = tables.fact("region");
    return new BookProperties(
        Summary.title(tables),
        Messages.of(
            "workbook.ProgramWorkbook.device-survival-cost-wetland-and-removals",
            Map.of("cut", cut)),
        day,
        region.isEmpty() ? cut : region + ", " + cut);
  }
}
