package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** What each funder's cash had a part in. */
final class ShareSentences {

  /** As the table calls devices that nobody paid cash for. */
  static final String NO_CASH = Messages.of("view.ShareSentences.no-cash-on-record");

  private ShareSentences() {}

  static List<Sentence> of(TablePackage tables) {
    Rows shares = Rows.of(tables, "funder_shares");
    boolean isNamed = tables.table("funder_shares").map(table -> table.has("funder")).orElse(false);
    if (shares.list().isEmpty() || !isNamed) {
      return List.of();
    }
    String funder = tables.fact("scope_funder");
    return funder.isEmpty() ? all(shares) : one(shares.where("funder", funder), tables);
  }

  private static List<Sentence> all(Rows shares) {
    List<Sentence> sentences = new ArrayList<>();
    int funders = shares.list().size() - shares.where("funder", NO_CASH).list().size();
    sentences.add(
        Said.of("share.all")
            .number("n", funders)
            .words("funders", NumberText.count(funders, "funders"))
            .build());
    Rows without = shares.where("funder", NO_CASH);
    if (without.first().isPresent()) {
      String devices = Cells.count(without.first().get(), "devices", "devices");
      sentences.add(Said.of("share.none").cell("devices", without, devices, "devices").build());
    }
    return sentences;
  }

  /** The sentences about one funder. */
  static List<Sentence> one(Rows own, TablePackage tables) {
    if (own.first().isEmpty()) {
      return List.of();
    }
    Row row = own.first().get();
    List<Sentence> sentences = new ArrayList<>();
    sentences.add(
        Said.of("share.funder.devices")
            .words("funder", row.text("funder"))
            .cell("devices", own, Cells.count(row, "devices", "devices"), "devices")
            .cell("cash", own, NumberText.dollars(value(row, "cash_usd")), "cash_usd")
            .words("year", tables.fact("base_year"))
            .cell("share", own, NumberText.percent(value(row, "cash_share")), "cash_share")
            .build());
    sentences.add(
        Said.of("share.funder.shared")
            .cell(
                "devicesShared", own, measured(row, "devices_shared", "devices"), "devices_shared")
            .cell(
                "yearsShared",
                own,
                measured(row, "functional_device_years_shared", "device-years"),
                "functional_device_years_shared")
            .cell(
                "acresShared",
                own,
                measured(row, "acre_years_shared", "acre-years"),
                "acre_years_shared")
            .cell(
                "propertiesShared",
                own,
                measured(row, "property_years_shared", "property-years"),
                "property_years_shared")
            .build());
    return sentences;
  }

  static String measured(Row row, String column, String unit) {
    return NumberText.measured(value(row, column), 1, unit);
  }

  private static double value(Row row, String column) {
    return Cells.number(row, column).orElse(0);
  }
}
