package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Rows;

/** What the office keeps: requests, agreements and permits, costs beyond devices. */
final class OfficeSheets {

  private OfficeSheets() {}

  static void requests(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "requests").add("grouping", "group", "year").heading("Fiscal year");
    columns.add("asked", "installed", "unsuitable", "waiting", "declined", "not_recorded");
    columns.add("installed_share");
    columns.live(Formula.share("installed", "installed", "unsuitable", "declined"));
    columns.add("lower", "upper", "installed_working");
    book.add(
        TableSheet.of(
                "Requests",
                "What became of requests for a device",
                List.of(
                    "Success among installed devices says nothing of sites that were turned down: this is the denominator. The share leaves out requests that wait or have no outcome."),
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
                "Agreements and permits",
                "Agreements and permits that lapse",
                List.of(
                    "Sites with a device in service, earliest first. Whether a permit is needed, and for how long, is the authority's to say."),
                columns,
                Rows.of(tables, "lapses").lines())
            .withKeyColumns(2));
  }

  static void expenses(Book book, TablePackage tables) {
    Columns columns =
        Columns.of(tables, "program_expenses").add("kind").heading("Kind").add("year");
    columns.heading("Fiscal year").add("lines");
    columns.add("cash_usd").total().add("in_kind_usd").total().add("miles").total();
    book.add(
        TableSheet.of(
                "Program expenses",
                "What the program cost beyond its devices",
                List.of(
                    "In no other cost table. Who paid it stands on sheet Who paid, in nominal dollars."),
                columns,
                Rows.of(tables, "program_expenses")
                    .only(row -> !row.text("kind").equals("all") && !row.text("year").equals("all"))
                    .lines())
            .withKeyColumns(2));
  }
}
