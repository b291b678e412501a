package pondtally.reports.workbook;

import java.util.List;
import java.util.OptionalDouble;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Rows;

/** Figures that differ between two runs; the difference is a live formula. */
final class ChangeSheets {

  private ChangeSheets() {}

  static void figures(Book book, TablePackage tables, String table, String sheet, String titleKey) {
    Columns columns = Columns.of(tables, table).add("published", "series");
    columns.add("table", "grouping", "group", "row", "column", "unit", "kind");
    columns.add("before").format(Format.TWO).add("after").format(Format.TWO);
    columns.add("difference").format(Format.TWO).live(Formula.difference("after", "before"));
    columns.add("relative").format(Format.SHARE).live(relative());
    columns
        .add("before_text")
        .format(Format.TEXT)
        .width(16)
        .add("after_text")
        .format(Format.TEXT)
        .width(16)
        .add("why")
        .format(Format.WRAPPED)
        .width(70)
        .add("sources");
    book.add(
        TableSheet.of(
                sheet,
                Messages.reports().text(titleKey),
                List.of(
                    Messages.reports().text("compare.together"),
                    Messages.reports().text("compare.limits")),
                columns,
                Rows.of(tables, table).lines())
            .withKeyColumns(3));
  }

  private static Formula relative() {
    return Formula.of(
        refs ->
            Formula.orUnknown(
                "(%s-%s)/ABS(%s)"
                    .formatted(refs.cell("after"), refs.cell("before"), refs.cell("before"))),
        line ->
            line.number("before").isEmpty()
                    || line.number("after").isEmpty()
                    || line.number("before").getAsDouble() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                    (line.number("after").getAsDouble() - line.number("before").getAsDouble())
                        / Math.abs(line.number("before").getAsDouble())));
  }
}
