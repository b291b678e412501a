package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.NumberText;

/** Which figures of published years are restated, and from what. */
final class PublishedSentences {

  /** Table, end of the row's key, column. */
  private static final List<List<String>> MAIN =
      List.of(
          List.of("costs", "", "total_usd"),
          List.of("failure_rates", "", "per_100_device_years"),
          List.of("wetland", "", "acre_years"),
          List.of("properties", "; property_type=all", "properties_protected"),
          List.of("removals_avoided", "; evidence=", "avoided_computed"));

  private PublishedSentences() {}

  static List<Sentence> of(TablePackage tables) {
    String years = tables.fact("published_years");
    if (years.isEmpty()) {
      return List.of();
    }
    List<Sentence> all = new ArrayList<>();
    for (String year : years.split(", ", -1)) {
      Rows restated =
          Rows.of(tables, "restated").where("published", year).where("series", "restated");
      int count = restated.list().size();
      all.add(
          Said.of("published.year")
              .words("year", year)
              .number("restated", count)
              .rows("count", restated, NumberText.count(count))
              .build());
      MAIN.forEach(main -> figure(restated, year, main).ifPresent(all::add));
    }
    all.add(Said.of("published.todate").build());
    return all;
  }

  private static Optional<Sentence> figure(Rows restated, String year, List<String> main) {
    Rows found =
        restated
            .where("table", main.get(0))
            .where("grouping", "all")
            .where("group", "all")
            .where("row", "year=" + year + main.get(1))
            .where("column", main.get(2));
    if (found.first().isEmpty() || found.first().get().number("difference").isEmpty()) {
      return Optional.empty();
    }
    Row row = found.first().get();
    Said said = Said.of("published.figure." + main.get(2)).words("year", year);
    for (String side : List.of("before", "after")) {
      String printed = ChangedFigure.print(row.number(side), row.number("difference"), row);
      said.cell(side, found, printed, side);
    }
    return Optional.of(
        said.cell("difference", found, ChangedFigure.difference(row), "difference")
            .words("why", row.text("why"))
            .build());
  }
}
