package pondtally.reports.workbook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Convention;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/**
 * The live model of benefit against cost for one new device of the program: assumptions in named
 * cells, what is expected in each year, and every figure a formula of these.
 *
 * @param row the program's own projection at its own rate
 * @param years what is expected in year 1, 2, …, past the horizon
 */
record ModelSheet(Row row, List<Row> years) {

  static final String NAME = Messages.of("workbook.ModelSheet.benefit-cost-model");
  static final String TITLE = Messages.of("workbook.ModelSheet.what-if-benefit-against-cost-of");

  /** Sentences under the title. */
  static final List<String> NOTES =
      List.of(
          Messages.of("workbook.ModelSheet.change-the-framed-cells-every-figure"),
          Convention.RATIO,
          Convention.BASELINE,
          Messages.of("workbook.ModelSheet.flows-fall-at-the-end-of"));

  /**
   * An assumption in a cell of its own.
   *
   * @param name what formulas call it
   * @param column of the result table that it comes from
   */
  record Assumption(String name, String label, String column, String unit, Format format) {}

  static final List<Assumption> ASSUMPTIONS =
      List.of(
          new Assumption(
              "Model_discount_rate",
              Messages.of("common.Discount-rate"),
              "discount_rate",
              Messages.of("common.a-year-real"),
              Format.SHARE),
          new Assumption(
              "Model_horizon_years",
              Messages.of("common.Years-looked-ahead"),
              "horizon_years",
              "years",
              Format.LABEL),
          new Assumption(
              "Model_damage_usd",
              Messages.of("workbook.ModelSheet.damage-without-a-device"),
              "damage_per_year_usd",
              Messages.of("common.Usd-a-year"),
              Format.TWO),
          new Assumption(
              "Model_build_usd",
              Messages.of("workbook.ModelSheet.building-one"),
              "build_usd",
              "USD",
              Format.TWO),
          new Assumption("Model_visit_usd", "A visit", "visit_usd", "USD", Format.TWO),
          new Assumption("Model_repair_usd", "A repair", "repair_usd", "USD", Format.TWO),
          new Assumption(
              "Model_replacement_usd", "A replacement", "replacement_usd", "USD", Format.TWO));

  /** Adds the sheet where something is projected for the whole program. */
  static void addTo(Book book, TablePackage tables) {
    String rate = tables.fact("discount_rate");
    Rows rows =
        Rows.of(tables, "benefit_cost").where("grouping", "all").where("basis", "projected");
    List<Row> years = Rows.of(tables, "benefit_years").where("grouping", "all").list();
    Optional<Row> own =
        rows.list().stream()
            .filter(row -> !rate.isEmpty() && same(row, Double.parseDouble(rate)))
            .findFirst();
    if (own.isPresent() && !years.isEmpty() && complete(own.get())) {
      book.add(new ModelSheet(own.get(), years));
    }
  }

  private static boolean same(Row row, double rate) {
    OptionalDouble own = Line.of(row).number("discount_rate");
    return own.isPresent() && own.getAsDouble() == rate;
  }

  private static boolean complete(Row row) {
    return ASSUMPTIONS.stream().allMatch(a -> Line.of(row).number(a.column()).isPresent());
  }
}
