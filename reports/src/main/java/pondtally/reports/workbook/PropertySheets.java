package pondtally.reports.workbook;

import java.util.Comparator;
import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** Properties protected, by type and by watershed. */
final class PropertySheets {

  private PropertySheets() {}

  static void byType(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "properties")
            .where("grouping", "all")
            .where("year", "all")
            .only(row -> !row.text("property_type").equals("all"))
            .lines();
    Columns columns = Columns.of(tables, "properties").add("property_type").width(26);
    columns.add("properties_recorded").total().add("properties_protected").total();
    share(columns).add("property_years").total();
    book.add(
        TableSheet.of(
            "Properties",
            "Properties protected, by type, whole record",
            List.of(
                "A property counts as protected where a device at its site was verified working on at least one day of its span. Each property has one type and counts once."),
            columns,
            lines));
  }

  static void byWatershed(Book book, TablePackage tables) {
    List<Line> lines =
        Rows.of(tables, "properties")
            .where("grouping", "watershed")
            .where("property_type", "all")
            .lines()
            .stream()
            .sorted(
                Comparator.comparing((Line line) -> line.text("group"))
                    .thenComparing(line -> line.text("year")))
            .toList();
    Columns columns =
        Columns.of(tables, "properties")
            .add("group")
            .heading("Watershed")
            .add("year")
            .heading("Fiscal year")
            .add("properties_recorded", "properties_protected");
    share(columns).add("property_years");
    book.add(
        TableSheet.of(
                "Properties by watershed",
                "Properties protected, by watershed and fiscal year",
                List.of(
                    "A property can lie in two watersheds and stands in each year, so nothing is added up here."),
                columns,
                lines)
            .withKeyColumns(2));
  }

  private static Columns share(Columns columns) {
    return columns
        .add("share", "Share protected", Format.SHARE)
        .live(Formula.ratio("properties_protected", "properties_recorded", 1));
  }
}
