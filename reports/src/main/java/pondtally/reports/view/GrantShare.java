package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;

/** What one funder's cash had a part in: whole, and as its cost share. */
final class GrantShare {

  private GrantShare() {}

  static Optional<GrantSection> of(TablePackage tables) {
    String funder = tables.fact("scope_funder");
    boolean isNamed = tables.table("funder_shares").map(table -> table.has("funder")).orElse(false);
    if (funder.isEmpty() || !isNamed) {
      return Optional.empty();
    }
    Rows own = Rows.of(tables, "funder_shares").where("funder", funder);
    if (own.first().isEmpty()) {
      return Optional.empty();
    }
    Messages say = Messages.reports();
    GrantTable.Builder table =
        GrantTable.of(say.text("share.table", Map.of("funder", funder)))
            .words(say.text("share.outcome"))
            .numbers(say.text("share.whole"), say.text("share.costShare"));
    row(table, own, "share.row.devices", "devices", "devices");
    row(table, own, "share.row.function", "functional_device_years", "device-years");
    row(table, own, "share.row.acres", "acre_years", "acre-years");
    row(table, own, "share.row.properties", "property_years", "property-years");
    List<GrantTable> shown = new ArrayList<>();
    table.addTo(shown, say.text("share.table.each"), say.text("share.note"));
    return Optional.of(
        new GrantSection(
            1, say.text("share.heading.grant"), ShareSentences.one(own, tables), shown, Map.of()));
  }

  private static void row(
      GrantTable.Builder table, Rows own, String label, String column, String unit) {
    Row row = own.first().orElseThrow();
    String whole =
        column.equals("devices")
            ? Cells.count(row, column, unit)
            : ShareSentences.measured(row, column, unit);
    table.row(
        GrantCells.words(Messages.reports().text(label)),
        Sentence.of("").cell(own, whole, column).build(),
        Sentence.of("")
            .cell(own, ShareSentences.measured(row, column + "_shared", unit), column + "_shared")
            .build());
  }
}
