package pondtally.reports.fixlist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A partner's row with all that was noticed about it.
 *
 * @param number as the spreadsheet shows it
 * @param key by which the row is known when the list comes back
 * @param cells the partner's values by position; positions without a value are absent
 * @param issues the gravest first
 */
record FaultyRow(int number, String key, Map<Integer, String> cells, List<Issue> issues) {

  FaultyRow {
    cells = new TreeMap<>(cells);
    issues = new ArrayList<>(issues);
    issues.sort(Comparator.comparingInt(Issue::rank));
  }

  int rank() {
    return issues.get(0).rank();
  }

  String fate() {
    return issues.get(0).fate();
  }

  /** The partner's headings of the cells at fault. */
  Set<String> faultyHeadings() {
    return issues.stream()
        .map(Issue::column)
        .filter(column -> !column.isEmpty())
        .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
  }

  /** All messages, each with the heading it is about. */
  String messages() {
    return issues.stream()
        .map(i -> i.column().isEmpty() ? i.message() : i.column() + ": " + i.message())
        .collect(Collectors.joining("\n"));
  }

  /** All suggestions. */
  String suggestions() {
    return issues.stream()
        .filter(issue -> !issue.suggestion().isEmpty())
        .map(i -> i.column().isEmpty() ? i.suggestion() : i.column() + ": " + i.suggestion())
        .collect(Collectors.joining("\n"));
  }
}
