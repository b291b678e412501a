package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pondtally.check.RowCounts;
import pondtally.check.Severity;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** Reports rows that could not be read as a table, and accounts for them. */
final class Unread {

  private Unread() {}

  private static RowCounts allSetAside(long rows) {
    return new RowCounts(rows, 0, 0, rows, 0);
  }

  /** The account of what could not be opened. */
  static RowCounts nothing() {
    return allSetAside(0);
  }

  private static String rows(long rows) {
    return rows == 1 ? "1 row" : rows + " rows";
  }

  /**
   * A sheet of no known table. Its rows are set aside where it is likely to hold records, by its
   * name or by some of its headings; else they are none.
   */
  static RowCounts unrecognised(
      long rows, boolean hasSomeHeadings, SheetSource source, TableName name, RowJudge judge) {
    boolean isLikely = hasSomeHeadings || name.table().isPresent();
    if (rows == 0) {
      about(judge, Severity.NOTICE, IntakeRule.FILE_EMPTY, "There is nothing in the file.");
      return allSetAside(0);
    }
    String what = source.isText() ? "file" : "sheet";
    if (name.isRemark()) {
      about(
          judge,
          Severity.NOTICE,
          IntakeRule.UNRECOGNISED_TABLE,
          "This %s holds explanations, as its name says. Its %s not read."
              .formatted(what, were(rows)));
      return allSetAside(0);
    }
    String tables =
        TableSchema.all().stream().map(TableSchema::name).collect(Collectors.joining(", "));
    about(
        judge,
        isLikely ? Severity.SET_ASIDE : Severity.NOTICE,
        IntakeRule.UNRECOGNISED_TABLE,
        "%s Its %s %s."
            .formatted(
                whyUnknown(name, what, tables), were(rows), isLikely ? "set aside" : "not read"));
    return allSetAside(isLikely ? rows : 0);
  }

  private static String were(long rows) {
    return rows == 1 ? "1 row was" : rows + " rows were";
  }

  private static String whyUnknown(TableName name, String what, String tables) {
    return name.table()
        .map(
            table ->
                "The name says %s, but none of the first %s rows holds the headings of that table. Expected %s. Write them there, or say in columns.yaml which headings stand for them (check --suggest begins one)."
                    .formatted(table.name(), HeadingSearch.ROWS, needed(table)))
        .orElse(
            "Neither the name nor the headings tell which table this is. Expected a name of the %s that begins with one of %s, or the headings of one of them. If it holds records, rename it or name its table in columns.yaml (check --suggest begins one)."
                .formatted(what, tables));
  }

  private static String needed(TableSchema table) {
    List<String> names = new ArrayList<>();
    table.fields().stream().filter(FieldSchema::required).forEach(f -> names.add(f.name()));
    table.anyOf().forEach(group -> names.add(String.join(" or ", group)));
    return String.join(", ", names);
  }

  /** Headings that lack a field without which no row can be used. */
  static RowCounts incomplete(long rows, Headings headings, Binding binding, RowJudge judge) {
    List<String> missing = new ArrayList<>();
    TableSchema table = headings.table();
    for (FieldSchema field : table.fields()) {
      boolean isKnown =
          binding.headingByField().containsKey(field.name())
              || headings.map().values().containsKey(field.name());
      if (field.required() && !isKnown) {
        missing.add(field.name());
      }
    }
    for (List<String> group : table.anyOf()) {
      if (group.stream().noneMatch(binding.headingByField()::containsKey)) {
        missing.add(String.join(" or ", group));
      }
    }
    about(
        judge,
        Severity.SET_ASIDE,
        IntakeRule.MISSING_COLUMN,
        "The table %s needs %s, and row %s has no such heading. Add the column, or say in columns.yaml which heading it has. %s set aside."
            .formatted(
                table.name(), String.join(" and ", missing), headings.row().number, rows(rows)));
    return allSetAside(rows);
  }

  /** A sheet of which columns.yaml says that it is not read. */
  static RowCounts skipped(long rows, RowJudge judge) {
    about(
        judge,
        Severity.NOTICE,
        IntakeRule.SHEET_SKIPPED,
        "Not read, as columns.yaml says (table: skip). It holds %s.".formatted(rows(rows)));
    return allSetAside(0);
  }

  /** A row of headings that is stated and in which nothing stands. */
  static RowCounts emptyHeadingRow(long rows, int headerRow, RowJudge judge) {
    about(
        judge,
        Severity.SET_ASIDE,
        IntakeRule.UNRECOGNISED_TABLE,
        "columns.yaml says that the headings stand in row %s, where nothing stands. Expected the row number that a spreadsheet shows beside them. %s set aside."
            .formatted(headerRow, rows(rows)));
    return allSetAside(rows);
  }

  /** What stands below the table. */
  static void belowTable(int row, String text, long rows, RowJudge judge) {
    judge.aboutSheet(
        null,
        null,
        text,
        Severity.NOTICE,
        IntakeRule.ROWS_BELOW_TABLE,
        "The table ends above row %s, as columns.yaml says (stop_at); %s from there on %s not read as data."
            .formatted(row, rows(rows), rows == 1 ? "was" : "were"),
        "");
  }

  /** Titles and notes above the headings. */
  static void aboveHeadings(List<RawRow> seen, Headings headings, RowJudge judge) {
    List<RawRow> above = seen.stream().filter(row -> row.number < headings.row().number).toList();
    if (!above.isEmpty()) {
      judge.aboutSheet(
          null,
          null,
          firstInk(above.get(0)),
          Severity.NOTICE,
          IntakeRule.ROWS_ABOVE_HEADINGS,
          "The headings stand in row %s; %s above them %s not read as data."
              .formatted(
                  headings.row().number, rows(above.size()), above.size() == 1 ? "was" : "were"),
          "");
    }
  }

  /** A name that says another table than the headings do. */
  static void otherName(TableSchema named, TableSchema read, RowJudge judge) {
    about(
        judge,
        Severity.NOTICE,
        IntakeRule.NAME_AND_HEADINGS_DIFFER,
        "The name says %s, but the headings are those of %s; it was read as %s."
            .formatted(named.name(), read.name(), read.name()));
  }

  private static void about(RowJudge judge, Severity severity, IntakeRule rule, String message) {
    judge.aboutSheet(null, null, null, severity, rule, message, "");
  }

  private static String firstInk(RawRow row) {
    int at = 0;
    while (Blank.clean(row.cell(at)).isEmpty()) {
      at++;
    }
    return row.cell(at);
  }
}
