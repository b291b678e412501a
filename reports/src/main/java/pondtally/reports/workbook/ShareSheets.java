package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Rows;

/** What each funder's cash had a part in; the cost shares add up under the table. */
final class ShareSheets {

  private ShareSheets() {}

  static void shares(Book book, TablePackage tables) {
    Columns columns = Columns.of(tables, "funder_shares").add("funder").width(30).add("devices");
    columns.add("devices_shared").format(Format.ONE).total().add("cash_usd").total();
    columns.add("cash_share").format(Format.SHARE);
    for (String column : List.of("functional_device_years", "acre_years", "property_years")) {
      columns.add(column).format(Format.ONE);
      columns.add(column + "_shared").format(Format.ONE).total();
    }
    book.add(
        TableSheet.of(
            Messages.of("workbook.ShareSheets.funder-shares"),
            Messages.reports().text("share.table.all"),
            List.of(Messages.reports().text("share.note")),
            columns,
            Rows.of(tables, "funder_shares").lines()));
  }
}
