package pondtally.reports.page;

import java.util.Comparator;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Rows;

/** What the office keeps: requests, agreements and permits, costs beyond devices. */
final class OfficeTables {

  private static final String ALL = "all";

  private OfficeTables() {}

  static PageTable requests(TablePackage tables) {
    return Grid.of(tables, "requests", "group")
        .note(Messages.of("common.Success-among-installed-devices-says-nothing"))
        .head(
            Messages.of("common.Watershed"), "group", group -> GroupText.label("watershed", group))
        .number(Shape.COUNT, "asked", "installed", "unsuitable", "waiting", "declined")
        .number(Shape.PERCENT, "installed_share", "lower", "upper")
        .number(Shape.COUNT, "installed_working")
        .build(
            Messages.of("page.OfficeTables.what-became-of-requests-by-watershed"),
            Rows.of(tables, "requests").where("grouping", "watershed").where("year", "all"));
  }

  static PageTable lapses(TablePackage tables) {
    return Grid.of(tables, "lapses", "until", "site_id", "what")
        .note(Messages.of("page.OfficeTables.sites-with-a-device-in-service"))
        .head(Messages.of("page.OfficeTables.holds-until"), "until", text -> text)
        .words(text -> text, "site_id")
        .words(GroupText::words, "what", "standing")
        .number(Shape.COUNT, "devices")
        .build(
            Messages.of("common.Agreements-and-permits-that-lapse"),
            Rows.of(tables, "lapses").only(row -> !row.text("standing").equals("later")));
  }

  private static String kind(String code) {
    return code.equals(ALL) ? Messages.of("page.OfficeTables.all-kinds") : GroupText.words(code);
  }

  /** The kinds, then the row of all of them. */
  private static Rows totalLast(Rows kinds) {
    return kinds.sorted(Comparator.comparing(row -> row.text("kind").equals(ALL)));
  }

  static PageTable expenses(TablePackage tables) {
    return Grid.of(tables, "program_expenses", "kind")
        .note(Messages.of("page.OfficeTables.in-no-other-cost-table-who"))
        .head(Messages.of("common.Kind"), "kind", OfficeTables::kind)
        .number(Shape.COUNT, "lines")
        .number(Shape.DOLLARS, "cash_usd", "in_kind_usd")
        .number(Shape.COUNT, "miles")
        .build(
            Messages.of("page.OfficeTables.what-the-program-cost-beyond-its"),
            totalLast(Rows.of(tables, "program_expenses").where("year", "all")));
  }
}
