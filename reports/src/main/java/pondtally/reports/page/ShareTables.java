package pondtally.reports.page;

import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Rows;

/** What each funder's cash had a part in. */
final class ShareTables {

  private ShareTables() {}

  static Stream<PageTable> of(TablePackage tables) {
    Messages say = Messages.reports();
    return Stream.of(
        Grid.of(tables, "funder_shares", "funder")
            .note(say.text("share.note"))
            .head(Messages.of("common.Funder"), "funder", funder -> funder)
            .number(Shape.COUNT, "devices")
            .number(Shape.ONE, "devices_shared")
            .number(Shape.DOLLARS, "cash_usd")
            .number(Shape.PERCENT, "cash_share")
            .number(Shape.ONE, "functional_device_years", "functional_device_years_shared")
            .number(Shape.ONE, "acre_years", "acre_years_shared")
            .number(Shape.ONE, "property_years", "property_years_shared")
            .build(say.text("share.table.all"), Rows.of(tables, "funder_shares")));
  }
}
