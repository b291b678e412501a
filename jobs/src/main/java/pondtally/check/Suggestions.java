package pondtally.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The nearest known id for each id that is not known. Named, never put in its place. */
final class Suggestions {

  private final Map<String, Map<String, String>> byRule = new HashMap<>();

  Suggestions(List<Finding> findings, KnownIds known) {
    find(findings, CheckRule.UNKNOWN_SITE, known.sites());
    find(findings, CheckRule.UNKNOWN_POND, known.ponds());
    find(findings, CheckRule.UNKNOWN_DEVICE, known.devices());
  }

  private void find(List<Finding> findings, CheckRule rule, List<String> known) {
    TreeSet<String> unknown =
        findings.stream()
            .filter(f -> f.rule().equals(rule.code()) && f.value() != null)
            .map(Finding::value)
            .collect(Collectors.toCollection(TreeSet::new));
    if (!unknown.isEmpty() && !known.isEmpty()) {
      byRule.put(rule.code(), NearestIds.of(known).suggestions(unknown));
    }
  }

  /** The finding's own suggestion, else the nearest id; empty where there is none. */
  String of(Finding finding) {
    Map<String, String> near = byRule.get(finding.rule());
    boolean looked = finding.suggestion().isEmpty() && near != null && finding.value() != null;
    return looked ? near.getOrDefault(finding.value(), "") : finding.suggestion();
  }
}
