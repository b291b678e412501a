package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;

/** What a report is about, where it is not the whole program. */
final class ScopeSentences {

  private ScopeSentences() {}

  /** Follows a title; empty for the whole program. */
  static String suffix(TablePackage tables) {
    String funder = tables.fact("scope_funder");
    String watershed = tables.fact("scope_watershed");
    if (funder.isEmpty() && watershed.isEmpty()) {
      return "";
    }
    String key = watershed.isEmpty() ? "funder" : funder.isEmpty() ? "watershed" : "both";
    return Messages.reports()
        .text("scope.suffix." + key, Map.of("funder", funder, "watershed", watershed));
  }

  static List<Sentence> of(TablePackage tables) {
    List<Sentence> all = new ArrayList<>();
    for (String scope : List.of("funder", "watershed")) {
      String name = tables.fact("scope_" + scope);
      if (!name.isEmpty()) {
        all.add(Said.of("scope." + scope).words(scope, name).build());
      }
    }
    if (!all.isEmpty()) {
      all.add(Said.of("scope.rows").build());
    }
    return all;
  }
}
