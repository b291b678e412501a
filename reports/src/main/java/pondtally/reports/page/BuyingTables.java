package pondtally.reports.page;

import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Rows;

/** What to buy for the next season. */
final class BuyingTables {

  private BuyingTables() {}

  static PageTable list(TablePackage tables) {
    return Grid.of(tables, "buying_list", "pipe", "item")
        .note(Messages.of("page.BuyingTables.replacements-are-built-like-the-devices"))
        .head(Messages.of("common.Pipe-type"), "pipe", pipe -> GroupText.label("pipe", pipe))
        .head(Messages.of("page.BuyingTables.item"), "item", GroupText::words)
        .words(text -> text, "unit")
        .number(Shape.TWO, "expected_quantity")
        .number(Shape.COUNT, "buy", "to_have")
        .build(Messages.of("common.What-to-buy-for-next-season"), Rows.of(tables, "buying_list"));
  }
}
