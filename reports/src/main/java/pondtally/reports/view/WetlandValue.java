package pondtally.reports.view;

import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/**
 * What the kept wetland may be worth by a published range, where {@code program.yaml} names one: a
 * line of its own, never in a ratio.
 */
public final class WetlandValue {

  /** Stands wherever the range is shown. */
  public static final String APART =
      Messages.of("view.WetlandValue.a-published-range-per-acre-year");

  private WetlandValue() {}

  /** The range for the whole program up to the end of the period; empty where it is off. */
  static Optional<Sentence> sentence(TablePackage tables) {
    Rows at = Rows.of(tables, "wetland_value").where("grouping", "all").where("year", "all");
    return at.first().map(row -> sentence(tables, at, row));
  }

  private static Sentence sentence(TablePackage tables, Rows at, Row row) {
    return Said.of("view.WetlandValue.apart-from-these-figures-the-wetland")
        .cell("low", at, dollars(row, "low_usd"), "low_usd")
        .cell("high", at, dollars(row, "high_usd"), "high_usd")
        .cell(
            "acreYears",
            at,
            Missing.orNotKnown(Cells.number(row, "acre_years"), NumberText::acreYears),
            "acre_years")
        .cell("lowEach", at, dollars(row, "low_usd_per_acre_year"), "low_usd_per_acre_year")
        .cell("highEach", at, dollars(row, "high_usd_per_acre_year"), "high_usd_per_acre_year")
        .cell("source", at, row.text("source"), "source")
        .cell("sourceYear", at, row.text("source_year"), "source_year")
        .fact("baseYear", "base_year", tables.fact("base_year"))
        .build();
  }

  private static String dollars(Row row, String column) {
    return Missing.orNotKnown(Cells.number(row, column), NumberText::dollars);
  }
}
