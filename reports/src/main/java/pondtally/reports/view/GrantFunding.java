package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.DateText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;
import pondtally.reports.text.NumberText;

/** Who paid, and whether the match that awards require is met. */
final class GrantFunding {

  private static final int MOST_ONE_BY_ONE = 3;

  private GrantFunding() {}

  static Optional<GrantSection> of(TablePackage tables) {
    Rows all = Rows.of(tables, "funding");
    if (all.list().isEmpty()) {
      return Optional.empty();
    }
    List<Sentence> sentences = new ArrayList<>();
    boolean named = isNamed(tables);
    match(all, named, sentences);
    sentences.add(GrantCells.words(FundingRule.EACH_LINE_ONCE + " " + FundingRule.VOLUNTEERS));
    List<GrantTable> shown = new ArrayList<>();
    table(all, named)
        .addTo(
            shown,
            Messages.of("view.GrantFunding.one-row-for-each-funder-and"),
            Messages.of("view.GrantFunding.dollars-of-the-day-nominal-so"));
    return Optional.of(
        new GrantSection(
            1, Messages.of("view.GrantFunding.who-paid-and-match"), sentences, shown, Map.of()));
  }

  /** The public edition leaves private columns out. */
  private static boolean isNamed(TablePackage tables) {
    return tables.table("funding").orElseThrow().fields().stream()
        .anyMatch(field -> field.name().equals("funder"));
  }

  private static String name(Row row, boolean named) {
    if (!named) {
      return Missing.WITHHELD;
    }
    return row.text("funder").isEmpty() ? Messages.of("common.not-recorded") : row.text("funder");
  }

  private static Rows key(Rows all, Row row, boolean named) {
    return (named ? all.where("funder", row.text("funder")) : all)
        .where("period_start", row.text("period_start"))
        .where("period_end", row.text("period_end"));
  }

  /** A few awards are told one by one, more of them in one sentence. */
  private static void match(Rows all, boolean named, List<Sentence> sentences) {
    Rows met = all.where("match_met", "true");
    Rows open = all.where("match_met", "false");
    int awards = met.list().size() + open.list().size();
    if (awards <= MOST_ONE_BY_ONE) {
      all.list().forEach(row -> met(key(all, row, named), row, name(row, named), sentences));
      return;
    }
    sentences.add(
        Said.of("view.GrantFunding.many-awards")
            .rows("met", met, NumberText.count(met.list().size()))
            .number("metCount", met.list().size())
            .rows("open", open, NumberText.count(open.list().size()))
            .number("openCount", open.list().size())
            .build());
  }

  private static void met(Rows at, Row row, String name, List<Sentence> sentences) {
    if (Cells.number(row, "match_required_usd").isEmpty() || row.text("match_met").isEmpty()) {
      return;
    }
    String period = row.text("period_start").isEmpty() ? "" : period(row);
    sentences.add(
        Said.of(
                period.isEmpty()
                    ? "view.GrantFunding.requires"
                    : "view.GrantFunding.award-of-requires")
            .words(
                "funder",
                name.equals(Missing.WITHHELD) ? Messages.of("view.GrantFunding.one-funder") : name)
            // A funder with several awards is named once for each: the period tells which.
            .words("period", period)
            .words("met", row.isTrue("match_met") ? "yes" : "no")
            .cell(
                "match",
                at,
                NumberText.dollars(Cells.number(row, "match_required_usd").getAsDouble()),
                "match_required_usd")
            .build());
  }

  private static GrantTable.Builder table(Rows all, boolean named) {
    GrantTable.Builder table =
        GrantTable.of(Messages.of("common.Who-paid-in-dollars-of-the"))
            .words(Messages.of("common.Funder"))
            .words(Messages.of("view.GrantFunding.budget-period"))
            .numbers(
                Messages.of("view.GrantFunding.cash"),
                Messages.of("common.In-kind"),
                Messages.of("view.GrantFunding.volunteer"),
                Messages.of("view.GrantFunding.award"),
                Messages.of("view.GrantFunding.match-required"))
            .words(Messages.of("view.GrantFunding.match-met"));
    for (Row row : all.list()) {
      Rows at = key(all, row, named);
      table.row(
          GrantCells.words(name(row, named)),
          GrantCells.words(period(row)),
          GrantCells.cell(at, "cash_usd", NumberText::dollars),
          GrantCells.cell(at, "in_kind_usd", NumberText::dollars),
          GrantCells.cell(at, "volunteer_usd", NumberText::dollars),
          GrantCells.cell(at, "award_usd", NumberText::dollars),
          GrantCells.cell(at, "match_required_usd", NumberText::dollars),
          GrantCells.words(yesOrNo(row.text("match_met"))));
    }
    return table;
  }

  private static String period(Row row) {
    return row.text("period_start").isEmpty()
        ? Messages.of("view.GrantFunding.outside-every-period")
        : Messages.of(
            "view.GrantFunding.to",
            Map.of(
                "periodStart",
                DateText.readable(row.text("period_start")),
                "periodEnd",
                DateText.readable(row.text("period_end"))));
  }

  private static String yesOrNo(String met) {
    return switch (met) {
      case "true" -> Messages.of("common.yes");
      case "false" -> Messages.of("view.GrantFunding.not-yet");
      default -> Missing.NOT_KNOWN;
    };
  }
}
