package pondtally.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** Rules about a row that concern more than one of its cells, and values of empty cells. */
final class RowRules {

  private record Default(int position, Object value) {}

  private record EndField(FieldSchema end, FieldSchema begin) {}

  private final RowJudge judge;
  private final List<BoundColumn> columns;
  private final List<List<FieldSchema>> anyOf = new ArrayList<>();
  private final List<EndField> ends = new ArrayList<>();
  private final List<Default> defaults = new ArrayList<>();

  RowRules(TableSchema table, List<BoundColumn> columns, RowJudge judge) {
    this.judge = judge;
    this.columns = columns;
    table.anyOf().forEach(group -> anyOf.add(group.stream().map(table::field).toList()));
    for (BoundColumn column : columns) {
      if (column.field().notBefore() != null) {
        ends.add(new EndField(column.field(), table.field(column.field().notBefore())));
      }
    }
    Converters converters = new Converters(table, null, SheetMap.NONE, judge);
    for (FieldSchema field : table.fields()) {
      if (field.defaultText() != null) {
        Object value = converters.text(field).convert(field.defaultText(), false);
        defaults.add(new Default(field.position(), value));
      }
    }
  }

  void apply(Object[] values) {
    for (List<FieldSchema> group : anyOf) {
      requireAny(group, values);
    }
    for (EndField pair : ends) {
      requireOrder(pair, values);
    }
    for (Default missing : defaults) {
      if (values[missing.position] == null) {
        values[missing.position] = missing.value;
      }
    }
  }

  private void requireAny(List<FieldSchema> group, Object[] values) {
    for (FieldSchema field : group) {
      if (values[field.position()] != null) {
        return;
      }
    }
    String names = group.stream().map(this::asWritten).collect(Collectors.joining(" or "));
    judge.setRowAside(
        IntakeRule.MISSING_REQUIRED,
        "",
        "The row needs %s, and nothing that can be used stands there. Write one of them."
            .formatted(names));
  }

  /** The partner's own heading, or our name of a field that has no column. */
  private String asWritten(FieldSchema field) {
    return columns.stream()
        .filter(column -> column.field().equals(field))
        .map(column -> Shown.value(column.heading()))
        .findFirst()
        .orElse(field.name());
  }

  private void requireOrder(EndField pair, Object[] values) {
    Object end = values[pair.end.position()];
    Object begin = values[pair.begin.position()];
    if (end == null || begin == null || (Integer) end >= (Integer) begin) {
      return;
    }
    values[pair.end.position()] = null;
    judge.fault(
        pair.end,
        iso(end),
        IntakeRule.DATES_REVERSED,
        "%s is before %s (%s). Correct whichever is wrong."
            .formatted(Shown.value(iso(end)), asWritten(pair.begin), iso(begin)),
        "");
  }

  private static String iso(Object day) {
    return LocalDate.ofEpochDay((Integer) day).toString();
  }
}
