package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** Removals avoided: a line a year, what was computed beside what was claimed. */
final class RemovalSheet {

  private static final String CLAIM = "claim ";

  private RemovalSheet() {}

  static void addTo(Book book, TablePackage tables) {
    List<Row> rows = Rows.of(tables, "removals_avoided").where("grouping", "all").list();
    Set<String> grades = new TreeSet<>();
    rows.forEach(row -> grades.add(row.text("evidence")));
    grades.remove("");
    List<Line> lines = years(rows);
    Columns columns = Columns.of(tables, "removals_avoided").add("year").width(24);
    columns.add("sites", "sites_left_out", "avoided_computed").format(Format.ONE).total();
    for (String grade : grades) {
      columns.add(CLAIM + grade, claimed(grade), Format.ONE).total();
    }
    columns.add("removals_reported").format(Format.ONE).total();
    book.add(
        TableSheet.of(
                Messages.of("workbook.RemovalSheet.removals"),
                Messages.of("common.Removals-avoided-computed-and-claimed"),
                List.of(
                    Messages.of("common.Computed-removals-a-year-before-times"),
                    Messages.of("common.The-partners-own-claims-stand-beside")),
                columns,
                lines)
            .withCharts(chart(lines.size(), grades)));
  }

  /** Sites where removal went on beside the devices. */
  static void continued(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "continued_removals").add("site_id", "year", "watershed", "setting");
    columns.add("removals_per_year_before").format(Format.ONE).add("removals").format(Format.ONE);
    columns.total().add("working_share", "evidence");
    book.add(
        TableSheet.of(
                Messages.of("workbook.RemovalSheet.removal-went-on"),
                Messages.of("common.Sites-with-devices-at-which-removal"),
                List.of(Messages.of("common.Where-animals-are-still-removed-success")),
                columns,
                Rows.of(tables, "continued_removals").lines())
            .withKeyColumns(2));
  }

  private static String claimed(String grade) {
    return grade.equals("none given")
        ? Messages.of("common.claimed-no-evidence-given")
        : Messages.of("workbook.RemovalSheet.claimed-by", Map.of("grade", grade));
  }

  private static List<Line> years(List<Row> rows) {
    Map<String, Map<String, String>> years = new TreeMap<>();
    for (Row row : rows) {
      Map<String, String> cells =
          years.computeIfAbsent(row.text("year"), year -> new LinkedHashMap<>());
      String grade = row.text("evidence");
      cells.put("year", row.text("year"));
      if (grade.isEmpty()) {
        List.of("sites", "sites_left_out", "avoided_computed", "removals_reported")
            .forEach(column -> cells.put(column, row.text(column)));
      } else {
        cells.put(CLAIM + grade, row.text("avoided_claimed"));
      }
    }
    return years.values().stream().map(Line::of).toList();
  }

  private static ChartPlan[] chart(int years, Set<String> grades) {
    if (years == 0) {
      return new ChartPlan[0];
    }
    List<ChartPlan.Series> series = new ArrayList<>();
    series.add(
        ChartPlan.Series.of(
            Messages.of("workbook.RemovalSheet.computed"), "year", "avoided_computed", years));
    for (String grade : grades) {
      series.add(ChartPlan.Series.of(claimed(grade), "year", CLAIM + grade, years));
    }
    return new ChartPlan[] {
      new ChartPlan(
          Messages.of("workbook.RemovalSheet.removals-avoided-by-year-computed-and"),
          Messages.of("workbook.RemovalSheet.bars-side-by-side-for-each"),
          ChartPlan.Kind.COLUMNS,
          Messages.of("common.Year"),
          Messages.of("common.Removals-avoided"),
          "0",
          series)
    };
  }
}
