package pondtally.reports.app;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import pondtally.check.RowAccount;
import pondtally.check.RowCounts;

/** The row account by partner, as lines for a terminal of 80 columns. */
final class PartnerAccounts {

  private static final int SHOWN = 20;
  private static final int NAME_WIDTH = 30;
  private static final String FORM = "%%-%ss %%9s %%9s %%9s %%9s %%9s";

  private static final Comparator<Map.Entry<String, RowCounts>> MOST_SET_ASIDE_FIRST =
      Comparator.comparingLong((Map.Entry<String, RowCounts> e) -> -e.getValue().setAside())
          .thenComparing(Map.Entry::getKey);

  private PartnerAccounts() {}

  /** One line a partner, those with most rows set aside first; none where there is one partner. */
  static List<String> lines(List<RowAccount> account) {
    Map<String, RowCounts> byPartner = new TreeMap<>();
    account.forEach(row -> byPartner.merge(row.partner(), row.counts(), RowCounts::plus));
    if (byPartner.size() < 2) {
      return List.of();
    }
    int width = byPartner.keySet().stream().mapToInt(name -> shown(name).length()).max().orElse(0);
    String form = FORM.formatted(Math.max(width, "Rows by partner".length()));
    List<String> lines = new ArrayList<>();
    lines.add(
        form.formatted("Rows by partner", "read", "used", "changed", "set aside", "duplicate"));
    byPartner.entrySet().stream()
        .sorted(MOST_SET_ASIDE_FIRST)
        .limit(SHOWN)
        .forEach(entry -> lines.add(line(form, shown(entry.getKey()), entry.getValue())));
    int more = byPartner.size() - SHOWN;
    if (more > 0) {
      lines.add("… and %s more; --json has every file and sheet.".formatted(more));
    }
    return lines;
  }

  private static String line(String form, String partner, RowCounts counts) {
    return form.formatted(
        partner,
        count(counts.read()),
        count(counts.used()),
        count(counts.changed()),
        count(counts.setAside()),
        count(counts.duplicate()));
  }

  private static String count(long rows) {
    return String.format(Locale.ROOT, "%,d", rows);
  }

  /** Control characters would move what stands beside them. */
  private static String shown(String partner) {
    String name = partner.isEmpty() ? "(no partner)" : partner.replaceAll("\\p{C}", "?");
    return name.length() > NAME_WIDTH ? name.substring(0, NAME_WIDTH - 1) + "…" : name;
  }
}
