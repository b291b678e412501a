package pondtally.reports.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import pondtally.reports.table.TablePackage;
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
    Book book = new Book(properties(tables), linesASheet);
    subjects(book, tables);
    statistics(book, tables);
    records(book, tables);
    book.addFirst(SummarySheet.of(tables, book.sheetNames()));
    book.write(file);
  }

  private static void subjects(Book book, TablePackage tables) {
    book.when(tables, "devices", StateSheets::states);
    book.when(tables, "failure_rates", RateSheets::watersheds);
    book.when(tables, "failure_rates", RateSheets::pipes);
    book.when(tables, "failure_rates", RateSheets::others);
    book.when(tables, "survival_summary", SurvivalSheets::summary);
    book.when(tables, "failure_causes", OutcomeSheets::causes);
    book.when(tables, "failure_causes", OutcomeSheets::causesByGroup);
    book.when(tables, "costs", CostSheets::byWatershed);
    book.when(tables, "costs", CostSheets::byYear);
    book.when(tables, "cost_effectiveness", CostSheets::perProperty);
    book.when(tables, "cost_effectiveness", CostSheets::unitCosts);
    book.when(tables, "benefit_cost", CostSheets::benefit);
    book.when(tables, "sensitivity", CostSheets::sensitivity);
    book.when(tables, "wetland", OutcomeSheets::wetland);
    book.when(tables, "wetland", OutcomeSheets::wetlandByYear);
    book.when(tables, "removals_avoided", OutcomeSheets::removals);
    book.when(tables, "properties", OutcomeSheets::properties);
    book.when(tables, "properties", OutcomeSheets::propertiesByWatershed);
    book.when(tables, "funding", CostSheets::funding);
    book.when(tables, "season_forecast", SeasonSheets::forecast);
    book.when(tables, "worklist", SeasonSheets::worklist);
    book.when(tables, "visit_interval", SeasonSheets::interval);
  }

  private static void statistics(Book book, TablePackage tables) {
    OtherTables.add(
        book,
        tables,
        "group_tests",
        "Tests",
        "A large p does not show that groups are alike. Pairs are adjusted for their number.");
    OtherTables.add(
        book,
        tables,
        "rate_ratios",
        "Rate ratios",
        "Limits that reach across 1: the records do not show a difference.");
    OtherTables.add(
        book,
        tables,
        "mean_life_differences",
        "Mean life differences",
        "Limits that reach across 0: the records do not show a difference.");
    OtherTables.add(
        book,
        tables,
        "hazard_ratios",
        "Hazard ratios",
        "Limits that reach across 1: the records do not show a difference. Above 1: fails sooner than the reference.");
    OtherTables.add(
        book,
        tables,
        "parametric_fits",
        "Fitted life",
        "Shape above 1: failure grows likelier with age.");
    OtherTables.add(
        book, tables, "fit_check", "Fit check", "A wide gap means that the fitted life misleads.");
    OtherTables.add(
        book,
        tables,
        "dating_comparison",
        "Dating of failures",
        "The same records, with failures dated in three ways.");
    OtherTables.add(
        book,
        tables,
        "sample_size",
        "What comparisons need",
        "How many failures it would take to tell two groups apart.");
  }

  private static void records(Book book, TablePackage tables) {
    book.when(tables, "devices", StateSheets::devices);
    book.when(tables, "sites", StateSheets::sites);
    book.when(tables, "row_account", CheckSheets::account);
    book.when(tables, "data_issues", CheckSheets::issues);
    book.when(tables, "completeness", CheckSheets::completeness);
    book.when(tables, "survival_curves", SurvivalSheets::points);
    CheckSheets.methods(book, tables);
    SettingsSheet.addTo(book, tables);
    CheckSheets.fields(book, tables);
  }

  private static BookProperties properties(TablePackage tables) {
    String asOf = tables.fact("as_of");
    LocalDate day = asOf.isEmpty() ? NO_DATE : LocalDate.parse(asOf);
    String cut = asOf.isEmpty() ? "data cut not known" : "records up to " + asOf;
    String region = tables.fact("region");
    return new BookProperties(
        Summary.title(tables),
        "Device survival, cost, wetland and removals; " + cut,
        day,
        region.isEmpty() ? cut : region + ", " + cut);
  }
}
