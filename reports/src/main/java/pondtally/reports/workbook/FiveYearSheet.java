package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** The last five fiscal years side by side: wetland, properties, failures and costs. */
final class FiveYearSheet {

  private static final int YEARS = 5;

  private FiveYearSheet() {}

  static void addTo(Book book, TablePackage tables) {
    List<Line> lines = lines(tables);
    if (lines.isEmpty()) {
      return;
    }
    Columns columns =
        Columns.of(tables, "wetland")
            .add("year")
            .heading(Messages.of("common.Fiscal-year"))
            .width(24);
    columns.beside("failure_rates").add("devices", "failures").total();
    columns.add("device_years").total().add("per_100_device_years");
    columns.live(Formula.ratio("failure_rates.failures", "failure_rates.device_years", 100));
    columns.add("lower", "upper");
    columns.beside("wetland").add("acres_retained_verified").add("acre_years").total();
    columns.beside("properties").add("properties_protected").add("property_years").total();
    columns.beside("costs").add("build_usd").total().add("upkeep_usd").total();
    columns.add("in_kind_usd").total();
    columns.beside("program_expenses").add("cash_usd").heading(expenses(tables)).total();
    book.add(
        TableSheet.of(
            Messages.of("workbook.FiveYearSheet.five-years"),
            Messages.of("workbook.FiveYearSheet.the-last-five-fiscal-years"),
            List.of(
                Messages.of("workbook.FiveYearSheet.a-fiscal-year-is-named-by"),
                Messages.of("workbook.FiveYearSheet.a-property-can-be-protected-in")),
            columns,
            lines));
  }

  private static String expenses(TablePackage tables) {
    return Messages.of(
        "workbook.FiveYearSheet.program-expenses-cash",
        Map.of(
            "trim",
            (Messages.of(
                    "workbook.FiveYearSheet.usd", Map.of("baseYear", tables.fact("base_year"))))
                .trim()));
  }

  private static List<Line> lines(TablePackage tables) {
    Map<String, Map<String, Line>> byTable = new TreeMap<>();
    for (String table : List.of("failure_rates", "wetland", "costs")) {
      byTable.put(table, all(tables, table).by("year"));
    }
    byTable.put("properties", all(tables, "properties").where("property_type", "all").by("year"));
    byTable.put(
        "program_expenses", Rows.of(tables, "program_expenses").where("kind", "all").by("year"));
    TreeSet<String> years = new TreeSet<>();
    byTable.values().forEach(table -> years.addAll(table.keySet()));
    years.remove("all");
    List<Line> lines = new ArrayList<>();
    for (String year : years) {
      Line line = Line.of(Map.of("year", year));
      for (Map.Entry<String, Map<String, Line>> table : byTable.entrySet()) {
        line = line.beside(table.getKey(), table.getValue().get(year));
      }
      lines.add(line);
    }
    return lines.subList(Math.max(0, lines.size() - YEARS), lines.size());
  }

  private static Rows all(TablePackage tables, String table) {
    return Rows.of(tables, table).where("grouping", "all").where("group", "all");
  }
}
