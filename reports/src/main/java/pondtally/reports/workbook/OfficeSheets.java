package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Rows;

/** What the office keeps: requests, agreements and permits, costs beyond devices. */
final class OfficeSheets {

  private OfficeSheets() {}

  static void requests(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "requests")
            .add("grouping", "group", "year")
            .heading(Messages.of("common.Fiscal-year"));
    columns.add("asked", "installed", "unsuitable", "waiting", "declined", "not_recorded");
    columns.add("installed_share").format(Format.SHARE);
    columns.live(Formula.share("installed", "installed", "unsuitable", "declined"));
    columns.add("lower").format(Format.SHARE).add("upper").format(Format.SHARE);
    columns.add("installed_working");
    book.add(
        TableSheet.of(
                Messages.of("workbook.OfficeSheets.requests"),
                Messages.of("workbook.OfficeSheets.what-became-of-requests-for-a"),
                List.of(Messages.of("common.Success-among-installed-devices-says-nothing")),
                columns,
                Rows.of(tables, "requests").lines())
            .withKeyColumns(2));
  }

  static void lapses(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "lapses").add("until", "site_id", "what", "standing", "days_left");
    columns.add("watershed", "county", "road_id", "devices", "partner");
    book.add(
        TableSheet.of(
                Messages.of("workbook.OfficeSheets.agreements-and-permits"),
                Messages.of("common.Agreements-and-permits-that-lapse"),
                List.of(Messages.of("workbook.OfficeSheets.sites-with-a-device-in-service")),
                columns,
                Rows.of(tables, "lapses").lines())
            .withKeyColumns(2));
  }

  static void expenses(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "program_expenses")
            .add("kind")
            .heading(Messages.of("common.Kind"))
            .add("year");
    columns.heading(Messages.of("common.Fiscal-year")).add("lines");
    columns
        .add("cash_usd")
        .total()
        .add("in_kind_usd")
        .total()
        .add("miles")
        .format(Format.COUNT)
        .total();
    book.add(
        TableSheet.of(
                Messages.of("workbook.OfficeSheets.program-expenses"),
                Messages.of("workbook.OfficeSheets.what-the-program-cost-beyond-its"),
                List.of(Messages.of("workbook.OfficeSheets.in-no-other-cost-table-who")),
                columns,
                Rows.of(tables, "program_expenses")
                    .only(row -> !row.text("kind").equals("all") && !row.text("year").equals("all"))
                    .lines())
            .withKeyColumns(2));
  }
}
