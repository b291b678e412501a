package pondtally.reports.page;

import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.view.Rows;

/** What the office keeps: requests, agreements and permits, costs beyond devices. */
final class OfficeTables {

  private OfficeTables() {}

  static PageTable requests(TablePackage tables) {
    return Grid.of(tables, "requests", "group")
        .note(
            "Success among installed devices says nothing of sites that were turned down: this is the denominator. The share leaves out requests that wait or have no outcome.")
        .head("Watershed", "group", group -> GroupText.label("watershed", group))
        .number(Shape.COUNT, "asked", "installed", "unsuitable", "waiting", "declined")
        .number(Shape.PERCENT, "installed_share", "lower", "upper")
        .number(Shape.COUNT, "installed_working")
        .build(
            "What became of requests, by watershed",
            Rows.of(tables, "requests").where("grouping", "watershed").where("year", "all"));
  }

  static PageTable lapses(TablePackage tables) {
    return Grid.of(tables, "lapses", "until", "site_id", "what")
        .note(
            "Sites with a device in service whose agreement or permit has lapsed or lapses within a year. Later ones are in program.xlsx. Whether a permit is needed is the authority's to say.")
        .head("Holds until", "until", text -> text)
        .words(text -> text, "site_id")
        .words(GroupText::words, "what", "standing")
        .number(Shape.COUNT, "devices")
        .build(
            "Agreements and permits that lapse",
            Rows.of(tables, "lapses").only(row -> !row.text("standing").equals("later")));
  }

  static PageTable expenses(TablePackage tables) {
    return Grid.of(tables, "program_expenses", "kind")
        .note("In no other cost table; who paid it stands under who paid, in nominal dollars.")
        .head("Kind", "kind", GroupText::words)
        .number(Shape.COUNT, "lines")
        .number(Shape.DOLLARS, "cash_usd", "in_kind_usd")
        .number(Shape.COUNT, "miles")
        .build(
            "What the program cost beyond its devices, whole record",
            Rows.of(tables, "program_expenses").where("year", "all"));
  }
}
