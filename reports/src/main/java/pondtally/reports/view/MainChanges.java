package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;

/** The figures of the whole program that a board knows by heart, as far as they differ. */
final class MainChanges {

  /** Table, what else singles the row out, column. */
  private static final List<List<String>> MAIN =
      List.of(
          List.of("survival_summary", "method=product-limit", "devices"),
          List.of("survival_summary", "method=product-limit", "failures"),
          List.of("survival_summary", "method=product-limit", "survival_3y"),
          List.of("survival_summary", "method=product-limit", "survival_5y"),
          List.of("survival_summary", "method=product-limit", "survival_10y"),
          List.of("survival_summary", "method=product-limit", "median_years"),
          List.of("failure_rates", "year=all", "per_100_device_years"),
          List.of("costs", "year=all", "total_usd"),
          List.of("cost_effectiveness", "year=all; measure=per-property; basis=cash", "value_usd"),
          List.of("benefit_cost", "basis=to-date", "ratio"),
          List.of("wetland", "year=all", "acres_retained_verified"),
          List.of("wetland", "year=all", "acre_years"),
          List.of("properties", "year=all; property_type=all", "properties_protected"));

  private MainChanges() {}

  static List<Sentence> of(TablePackage tables) {
    Rows whole = Rows.of(tables, "changes").where("grouping", "all").where("group", "all");
    List<Sentence> all = new ArrayList<>();
    for (List<String> main : MAIN) {
      Rows found = whole.where("table", main.get(0)).where("column", main.get(2));
      found.list().stream()
          .filter(row -> row.text("row").startsWith(main.get(1)))
          .map(row -> row.text("row"))
          .findFirst()
          .ifPresent(row -> all.add(sentence(found.where("row", row))));
    }
    if (all.isEmpty()) {
      all.add(Said.of("compare.figures.same").build());
    }
    return all;
  }

  /** One changed figure with its cause. */
  static Sentence sentence(Rows change) {
    Row row = change.first().orElseThrow();
    String column = row.text("column");
    boolean isNumber = row.number("before").isPresent() && row.number("after").isPresent();
    Said said =
        Said.of(isNumber ? "compare.figure" : "compare.figure.text")
            .words("what", Messages.reports().text("compare.main." + column))
            .words("why", row.text("why"));
    for (String side : List.of("before", "after")) {
      String printed = ChangedFigure.print(row.number(side), row.number("difference"), row);
      if (row.number(side).isPresent()) {
        said.cell(side, change, printed, side);
      } else {
        said.words(side, printed);
      }
    }
    if (isNumber) {
      said.cell("difference", change, ChangedFigure.difference(row), "difference");
    }
    return said.build();
  }
}
