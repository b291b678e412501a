package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.check.Severity;
import pondtally.schema.FieldSchema;
import pondtally.schema.HeadingMatch;
import pondtally.schema.TableSchema;
import pondtally.schema.Unit;

/** Values that {@code columns.yaml} states for fields which have no column in a sheet. */
final class FixedValues {

  private record Filled(FieldSchema field, String text, Object value) {}

  private final List<Filled> filled = new ArrayList<>();
  private final RowJudge judge;
  private long rows;

  /**
   * @param headings fields that have a column, by their names
   */
  FixedValues(TableSchema table, SheetMap map, Map<String, String> headings, RowJudge judge) {
    this.judge = judge;
    map.values()
        .forEach(
            (name, text) -> {
              if (!headings.containsKey(name)) {
                FieldSchema field = table.field(name);
                RowJudge unheard = new RowJudge(0, 0, table.name());
                filled.add(
                    new Filled(
                        field, text, value(table, field, map.units().get(name), text, unheard)));
              }
            });
  }

  /** What is wrong with a fixed value, as a sentence; empty: nothing. */
  static String fault(TableSchema table, FieldSchema field, Unit unit, String text) {
    if (text.isEmpty()) {
      return "there is no value. Leave the line out if it is not known";
    }
    RowJudge judge = new RowJudge(0, 0, table.name());
    if (value(table, field, unit, text, judge) != null) {
      return "";
    }
    String suggestion = judge.findings().get(0).suggestion();
    return RowJudge.withoutFate(judge.findings().get(0).message())
        + (suggestion.isEmpty() ? "" : " Did you mean `%s`?".formatted(suggestion));
  }

  private static Object value(
      TableSchema table, FieldSchema field, Unit unit, String text, RowJudge judge) {
    SheetClues none = SheetClues.none();
    return new Converters(table, none, SheetMap.NONE, judge)
        .of(0, new HeadingMatch(field, unit, "", true))
        .convert(text, false);
  }

  /** Fills the values of a row in. */
  void fill(Object[] values) {
    if (filled.isEmpty()) {
      return;
    }
    rows++;
    judge.changedWithColumn();
    for (Filled one : filled) {
      values[one.field.position()] = one.value;
    }
  }

  /** Tells once of each field in how many rows. */
  void finish() {
    for (Filled one : rows == 0 ? List.<Filled>of() : filled) {
      judge.aboutSheet(
          one.field.name(),
          null,
          one.text,
          Severity.CHANGED,
          IntakeRule.VALUE_FILLED,
          "No column holds %s; columns.yaml fills in %s: %s."
              .formatted(
                  one.field.name(), Shown.value(one.text), rows == 1 ? "1 row" : rows + " rows"),
          "");
    }
  }
}
