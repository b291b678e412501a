package pondtally.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pondtally.record.Origin;

/** Sheets of which so much was set aside that one shared cause is likely. */
final class Shares {

  private static final double MANY = 0.10;
  private static final int FEWEST = 3;

  private final Map<SheetPlace, Map<String, Set<Integer>>> rowsByRule = new HashMap<>();

  Shares(List<Finding> findings) {
    for (Finding finding : findings) {
      if (finding.severity() == Severity.SET_ASIDE && finding.origin().row() > 0) {
        rowsByRule
            .computeIfAbsent(SheetPlace.of(finding.origin()), unused -> new TreeMap<>())
            .computeIfAbsent(finding.rule(), unused -> new TreeSet<>())
            .add(finding.origin().row());
      }
    }
  }

  /** A notice about the sheet where more than a tenth of its rows, and not one or two, was. */
  Optional<Finding> notice(SheetReport report, RowCounts counts) {
    if (counts.setAside() < FEWEST || counts.setAside() <= MANY * counts.read()) {
      return Optional.empty();
    }
    String share = counts.setAside() + " of " + counts.read();
    String message =
        """
            %s of the %s here (%s %%) were set aside, %s. One cause may stand behind \
            many of them: begin with the first reason."""
            .formatted(
                String.valueOf(counts.setAside()),
                Words.count(counts.read(), "row"),
                String.valueOf(Math.round(100.0 * counts.setAside() / counts.read())),
                reasons(SheetPlace.of(report)));
    return Optional.of(
        new Finding(
            new Origin(report.file(), report.sheet(), 0, false),
            report.table(),
            null,
            null,
            share,
            Severity.NOTICE,
            CheckRule.MANY_ROWS_SET_ASIDE.code(),
            message,
            ""));
  }

  /** The three most frequent reasons, {@code 20 for unknown-device}. */
  private String reasons(SheetPlace sheet) {
    return rowsByRule.getOrDefault(sheet, Map.of()).entrySet().stream()
        .sorted(
            Map.Entry.<String, Set<Integer>>comparingByValue((a, b) -> b.size() - a.size())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(3)
        .map(rule -> rule.getValue().size() + " for " + rule.getKey())
        .collect(Collectors.joining(", "));
  }
}
