package pondtally.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Issues of one rule and severity: the first few, and how many more in which sheets. */
final class IssueGroup {

  private static final int SHOWN = 5;
  private static final int SHEETS_NAMED = 3;

  private final Severity severity;
  private final String rule;
  private final List<DataIssue> first = new ArrayList<>();
  private final Map<String, Long> more = new LinkedHashMap<>();
  private long count;

  IssueGroup(Severity severity, String rule) {
    this.severity = severity;
    this.rule = rule;
  }

  void add(DataIssue issue) {
    count++;
    if (first.size() < SHOWN) {
      first.add(issue);
    } else {
      more.merge(sheetName(issue), 1L, Long::sum);
    }
  }

  Severity severity() {
    return severity;
  }

  String rule() {
    return rule;
  }

  long count() {
    return count;
  }

  List<DataIssue> first() {
    return first;
  }

  /** How many are not among the first. */
  long more() {
    return count - first.size();
  }

  /** {@code and 207 more: north/visits.csv (150), south/all.xlsx, sheet 2024 (57).} */
  String whereTheRestAre(String fullList) {
    List<String> parts = new ArrayList<>();
    more.entrySet().stream()
        .limit(SHEETS_NAMED)
        .forEach(sheet -> parts.add("%s (%s)".formatted(sheet.getKey(), sheet.getValue())));
    if (more.size() > SHEETS_NAMED) {
      long elsewhere = more.values().stream().skip(SHEETS_NAMED).mapToLong(Long::longValue).sum();
      parts.add(
          "%s (%s)".formatted(Words.count(more.size() - SHEETS_NAMED, "more sheet"), elsewhere));
    }
    String list = fullList.isEmpty() ? "" : " All are listed in " + fullList + ".";
    return "… and %s more: %s.%s".formatted(more(), Words.list(parts), list);
  }

  /** File and sheet, control characters escaped. */
  static String sheetName(DataIssue issue) {
    String name =
        issue.sheet().isEmpty() ? issue.file() : issue.file() + ", sheet " + issue.sheet();
    return Words.visible(name);
  }
}
