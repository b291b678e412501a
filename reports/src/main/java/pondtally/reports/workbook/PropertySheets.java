package pondtally.reports.workbook;

import java.util.Comparator;
import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
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
            Messages.of("common.Properties"),
            Messages.of("common.Properties-protected-by-type-whole-record"),
            List.of(Messages.of("workbook.PropertySheets.a-property-counts-as-protected-where")),
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
            .heading(Messages.of("common.Watershed"))
            .add("year")
            .heading(Messages.of("common.Fiscal-year"))
            .add("properties_recorded", "properties_protected");
    share(columns).add("property_years");
    book.add(
        TableSheet.of(
                Messages.of("workbook.PropertySheets.properties-by-watershed"),
                Messages.of("workbook.PropertySheets.properties-protected-by-watershed-and-fiscal"),
                List.of(Messages.of("workbook.PropertySheets.a-property-can-lie-in-two")),
                columns,
                lines)
            .withKeyColumns(2));
  }

  private static Columns share(Columns columns) {
    return columns
        .add("share", Messages.of("workbook.PropertySheets.share-protected"), Format.SHARE)
        .live(Formula.ratio("properties_protected", "properties_recorded", 1));
  }
}
