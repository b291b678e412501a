package pondtally.reports.page;

import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.view.Rows;

/** What to buy for the next season. */
final class BuyingTables {

  private BuyingTables() {}

  static PageTable list(TablePackage tables) {
    return Grid.of(tables, "buying_list", "pipe", "item")
        .note(
            "Replacements are built like the devices in service: pipe comes in lengths of 20 ft, n sections take n - 1 couplers, a panel of 16 ft laps by 1/3 ft. What repairs took is counted only where partners keep lines of it.")
        .head("Pipe type", "pipe", pipe -> GroupText.label("pipe", pipe))
        .head("Item", "item", GroupText::words)
        .words(text -> text, "unit")
        .number(Shape.TWO, "expected_quantity")
        .number(Shape.COUNT, "buy", "to_have")
        .build(
            "What to buy for next season's repairs and replacements",
            Rows.of(tables, "buying_list"));
  }
}
