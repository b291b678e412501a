package pondtally.reports.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.check.UserError;
import pondtally.reports.table.LongTable;
import pondtally.reports.table.Row;

/** Which rows of the contributions make up one total. */
final class TraceFilter {

  /** Columns that a group can be a value of, and what messages call them. */
  private static final List<String> GROUPINGS =
      List.of("watershed", "pipe", "kind", "crew", "cohort", "build", "setting", "part");

  private static final String PAIR = "pipe-in-watershed";
  private static final String ALL = "all";

  private final String subject;
  private final String grouping;
  private final String group;
  private final String year;

  private TraceFilter(String subject, String grouping, String group, String year) {
    this.subject = subject;
    this.grouping = grouping;
    this.group = group;
    this.year = year;
  }

  /**
   * The filter for what the user asked.
   *
   * @param group a value, or grouping=value; null: all
   * @param year null: all years, or what stands at the end of the period
   */
  static TraceFilter of(LongTable rows, String subject, String group, String year) {
    Map<String, TreeSet<String>> groups = new TreeMap<>();
    TreeSet<String> years = new TreeSet<>();
    rows.forEach(
        row -> {
          if (row.text("subject").equals(subject)) {
            years.add(row.text("year"));
            for (String grouping : GROUPINGS) {
              add(groups, grouping, row.text(grouping));
            }
            add(groups, PAIR, pair(row));
          }
        });
    if (year != null) {
      TraceCommand.require("--year", year, List.copyOf(years), "year of " + subject);
    }
    String only = year == null && years.contains(ALL) ? ALL : year;
    if (group == null || group.equals(ALL)) {
      return new TraceFilter(subject, null, null, only);
    }
    String grouping = grouping(groups, subject, group);
    String value =
        group.startsWith(grouping + "=") ? group.substring(grouping.length() + 1) : group;
    return new TraceFilter(subject, grouping, value, only);
  }

  private static void add(Map<String, TreeSet<String>> groups, String grouping, String value) {
    if (!value.isEmpty()) {
      groups.computeIfAbsent(grouping, g -> new TreeSet<>()).add(value);
    }
  }

  private static String pair(Row row) {
    String watershed = row.text("watershed");
    String pipe = row.text("pipe");
    return watershed.isEmpty() || pipe.isEmpty() ? "" : watershed + " / " + pipe;
  }

  private static String grouping(
      Map<String, TreeSet<String>> groups, String subject, String group) {
    List<String> found = new ArrayList<>();
    List<String> values = new ArrayList<>();
    groups.forEach(
        (grouping, own) -> {
          if (own.contains(group) || group.startsWith(grouping + "=")) {
            found.add(grouping);
          }
          values.addAll(own);
        });
    if (groups.isEmpty()) {
      throw UserError.usage(
          "--group %s: %s is not divided by groups: what it counts may belong to several. Leave --group out."
              .formatted(group, subject));
    }
    if (found.isEmpty()) {
      TraceCommand.require("--group", group, values, "group of " + subject);
    }
    if (found.size() > 1) {
      throw UserError.usage(
          "--group %s is a group of several groupings; write one of: %s."
              .formatted(
                  group, String.join(", ", found.stream().map(g -> g + "=" + group).toList())));
    }
    String grouping = found.get(0);
    if (group.startsWith(grouping + "=")) {
      String value = group.substring(grouping.length() + 1);
      TraceCommand.require(
          "--group", value, List.copyOf(groups.get(grouping)), grouping + " of " + subject);
    }
    return grouping;
  }

  boolean takes(Row row) {
    return row.text("subject").equals(subject)
        && (year == null || row.text("year").equals(year))
        && (grouping == null
            || (grouping.equals(PAIR) ? pair(row) : row.text(grouping)).equals(group));
  }

  /** What was asked besides the subject, in words. */
  String words() {
    String of = grouping == null ? "" : " of " + group;
    return of + (year == null || year.equals(ALL) ? "" : " in " + year);
  }
}
