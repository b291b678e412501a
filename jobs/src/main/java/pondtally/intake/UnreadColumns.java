package pondtally.intake;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pondtally.check.Severity;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** Counts the cells of columns that are not read, so that none goes unnoticed. */
final class UnreadColumns {

  private final TableSchema table;
  private final Binding binding;
  private final int[] columns;
  private final int[] cells;
  private final Map<Integer, Integer> withoutHeading = new TreeMap<>();

  UnreadColumns(TableSchema table, Binding binding) {
    this.table = table;
    this.binding = binding;
    this.columns = binding.ignored().keySet().stream().mapToInt(Integer::intValue).toArray();
    this.cells = new int[columns.length];
  }

  void count(RawRow row) {
    for (int i = 0; i < columns.length; i++) {
      if (!Blank.clean(row.cell(columns[i])).isEmpty()) {
        cells[i]++;
      }
    }
  }

  void countBeyondHeadings(RawRow row) {
    for (int i = binding.width(); i < row.width; i++) {
      if (!Blank.clean(row.cell(i)).isEmpty()) {
        withoutHeading.merge(i, 1, Integer::sum);
      }
    }
  }

  /** One notice for each column. */
  void report(RowJudge judge) {
    for (int i = 0; i < columns.length; i++) {
      Binding.Ignored ignored = binding.ignored().get(columns[i]);
      if (ignored.heading().isEmpty()) {
        nameless(judge, columns[i], cells[i]);
      } else if (ignored.twin() == null) {
        unknown(judge, ignored.heading(), cells[i]);
      } else {
        twin(judge, columns[i], ignored, cells[i]);
      }
    }
    withoutHeading.forEach((column, count) -> nameless(judge, column, count));
  }

  private static void nameless(RowJudge judge, int column, int count) {
    if (count > 0) {
      notice(
          judge,
          "",
          IntakeRule.UNKNOWN_COLUMN,
          "Column %s has no heading.%s".formatted(ColumnLetters.of(column), unread(count, "in it")),
          "");
    }
  }

  private void unknown(RowJudge judge, String heading, int count) {
    List<String> names = table.fields().stream().map(FieldSchema::name).toList();
    String near =
        Likeness.nearest(heading, names.stream().map(name -> name.replace('_', '-')).toList());
    notice(
        judge,
        heading,
        IntakeRule.UNKNOWN_COLUMN,
        "%s is no heading of the table %s.%s"
            .formatted(Shown.value(heading), table.name(), unread(count, "below it")),
        near.replace('-', '_'));
  }

  private static void twin(RowJudge judge, int column, Binding.Ignored ignored, int count) {
    String used = ColumnLetters.of(ignored.usedColumn());
    String letters = ColumnLetters.of(column);
    notice(
        judge,
        ignored.heading(),
        IntakeRule.DUPLICATE_HEADING,
        "Columns %s and %s both stand for %s, of which column %s was read. Keep one of them, or name the right one in columns.yaml.%s"
            .formatted(
                used, letters, ignored.twin().name(), used, unread(count, "of column " + letters)),
        "");
  }

  private static String unread(int cells, String where) {
    return switch (cells) {
      case 0 -> " Nothing stands %s.".formatted(where);
      case 1 -> " 1 cell %s was not read.".formatted(where);
      default -> " %s cells %s were not read.".formatted(cells, where);
    };
  }

  private static void notice(
      RowJudge judge, String heading, IntakeRule rule, String message, String suggestion) {
    judge.aboutSheet(null, heading, "", Severity.NOTICE, rule, message, suggestion);
  }
}
