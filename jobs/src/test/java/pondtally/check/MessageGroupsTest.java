package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MessageGroupsTest {

  private static DataIssue issue(
      String file, Integer row, Severity severity, String rule, String value, String suggestion) {
    return new DataIssue(
        "north",
        file,
        file.endsWith(".xlsx") ? "2024" : "",
        row,
        "revisits",
        row == null ? "" : "Device",
        value,
        severity,
        rule,
        "No such device.",
        suggestion);
  }

  @Test
  void gravestFirstFiveOfEachAndWhereTheRestAre() {
    List<DataIssue> issues = new ArrayList<>();
    issues.add(issue("a.csv", null, Severity.NOTICE, "unknown-column", "", ""));
    for (int row = 2; row < 9; row++) {
      issues.add(issue("a.csv", row, Severity.SET_ASIDE, "unknown-device", "D" + row, ""));
    }
    issues.add(issue("b.xlsx", 4, Severity.SET_ASIDE, "unknown-device", "D9", "D-9"));
    issues.add(issue("b.xlsx", 5, Severity.SET_ASIDE, "visit-before-install", "", "D-9"));
    assertEquals(
        """
        Rows set aside, unknown-device: 8 issues
          a.csv, row 2, "Device": "D2"
            No such device.
          a.csv, row 3, "Device": "D3"
            No such device.
          a.csv, row 4, "Device": "D4"
            No such device.
          a.csv, row 5, "Device": "D5"
            No such device.
          a.csv, row 6, "Device": "D6"
            No such device.
          … and 3 more: a.csv (2) and b.xlsx, sheet 2024 (1). All are listed in fix-list.xlsx.

        Rows set aside, visit-before-install: 1 issue
          b.xlsx, sheet 2024, row 5, "Device" (empty)
            No such device.
            Suggested: D-9

        To look at, unknown-column: 1 issue
          a.csv
            No such device.""",
        String.join("\n", MessageGroups.lines(issues, "fix-list.xlsx")));
  }

  @Test
  void aColumnAsAWholeIsNotCalledEmpty() {
    DataIssue column =
        new DataIssue(
            "north",
            "a.csv",
            "",
            null,
            "areas",
            "Area (ha)",
            "",
            Severity.CHANGED,
            "r",
            "Read.",
            "");
    assertEquals("  a.csv, \"Area (ha)\"", MessageGroups.lines(List.of(column), "").get(1));
  }

  @Test
  void manySheetsAreCounted() {
    List<DataIssue> issues = new ArrayList<>();
    for (int file = 0; file < 12; file++) {
      issues.add(issue(file + ".csv", 2, Severity.CHANGED, "unit-converted", "v", ""));
    }
    List<String> lines = MessageGroups.lines(issues, "");
    assertEquals("Values changed or left out, unit-converted: 12 issues", lines.get(0));
    assertEquals(
        "  … and 7 more: 5.csv (1), 6.csv (1), 7.csv (1) and 4 more sheets (4).",
        lines.get(lines.size() - 1));
  }

  @Test
  void longMessagesAreWrappedAndControlCharactersShown() {
    DataIssue long1 =
        new DataIssue(
            "north",
            "a\u0007.csv",
            "",
            3,
            "revisits",
            "Date\n(day)",
            "x".repeat(60),
            Severity.CHANGED,
            "rule",
            "word ".repeat(30).strip() + "\u001b[31m",
            "");
    assertEquals(
        List.of(
            "Values changed or left out, rule: 1 issue",
            "  a\\u0007.csv, row 3, \"Date\\u000a(day)\": \"" + "x".repeat(40) + "…\"",
            "    " + "word ".repeat(19).strip(),
            "    " + "word ".repeat(11).strip() + "\\u001b[31m"),
        MessageGroups.lines(List.of(long1), ""));
  }
}
