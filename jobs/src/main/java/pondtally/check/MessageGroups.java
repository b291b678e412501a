package pondtally.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Issues as lines of plain text for a terminal: grouped by what became of the row and by rule, rows
 * set aside first, then by number. The first five of a group are shown in full, then how many more
 * there are and in which sheets.
 */
public final class MessageGroups {

  private static final int WIDTH = 100;
  private static final Comparator<IssueGroup> GRAVEST_FIRST =
      Comparator.comparing(IssueGroup::severity)
          .thenComparing(Comparator.comparingLong(IssueGroup::count).reversed())
          .thenComparing(IssueGroup::rule);

  private MessageGroups() {}

  /**
   * @param issues in file order
   * @param fullList where all of them are listed, for example {@code fix-list.xlsx}; empty for
   *     nowhere
   * @return lines without line ends; an empty line between groups
   */
  public static List<String> lines(List<DataIssue> issues, String fullList) {
    Map<String, IssueGroup> groups = new TreeMap<>();
    for (DataIssue issue : issues) {
      groups
          .computeIfAbsent(
              issue.severity() + " " + issue.rule(),
              unused -> new IssueGroup(issue.severity(), issue.rule()))
          .add(issue);
    }
    List<String> lines = new ArrayList<>();
    groups.values().stream()
        .sorted(GRAVEST_FIRST)
        .forEach(group -> addGroup(lines, group, fullList));
    return lines;
  }

  private static void addGroup(List<String> lines, IssueGroup group, String fullList) {
    if (!lines.isEmpty()) {
      lines.add("");
    }
    lines.add(heading(group));
    for (DataIssue issue : group.first()) {
      wrap(lines, "  ", place(issue));
      wrap(lines, "    ", Words.visible(issue.message()));
      if (!issue.suggestion().isEmpty() && !isRead(issue)) {
        wrap(lines, "    ", "Suggested: " + Words.visible(issue.suggestion()));
      }
    }
    if (group.more() > 0) {
      wrap(lines, "  ", group.whereTheRestAre(fullList));
    }
  }

  /** A value that was read needs no other, and its reading stands in the message. */
  private static boolean isRead(DataIssue issue) {
    return issue.severity() == Severity.CHANGED && issue.message().contains(" is read as ");
  }

  private static String heading(IssueGroup group) {
    String fate =
        switch (group.severity()) {
          case SET_ASIDE -> "Rows set aside";
          case CHANGED -> "Values changed or left out";
          case NOTICE -> "To look at";
        };
    return "%s, %s: %s".formatted(fate, group.rule(), Words.count(group.count(), "issue"));
  }

  /** {@code north/installs.xlsx, sheet 2024, row 57, "Install date": "31/02/2024"}. */
  private static String place(DataIssue issue) {
    StringBuilder text = new StringBuilder(IssueGroup.sheetName(issue));
    if (issue.row() != null) {
      text.append(", row ").append(issue.row());
    }
    if (!issue.column().isEmpty()) {
      text.append(", ").append(Words.quoteAsShown(issue.column()));
      text.append(valueOf(issue));
    }
    return text.toString();
  }

  /** What stands in the cell; nothing where the whole column is meant. */
  private static String valueOf(DataIssue issue) {
    if (issue.value().isEmpty()) {
      return issue.row() == null ? "" : " (empty)";
    }
    return ": " + Words.quoteAsShown(issue.value());
  }

  private static void wrap(List<String> lines, String indent, String text) {
    StringBuilder line = new StringBuilder(indent);
    for (String word : text.split(" ", -1)) {
      boolean begun = line.length() > indent.length();
      if (begun && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
        begun = false;
      }
      line.append(begun ? " " : "").append(word);
    }
    lines.add(line.toString());
  }
}
