package pondtally.table;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Result tables from lists of records: the components of the record are the columns, in the same
 * order and with the same names ({@code deviceYears} is {@code device_years}).
 */
public final class RecordRows {

  private RecordRows() {}

  /** The table declared as {@code name} with one row for each record. */
  public static ResultTable table(String name, List<? extends Record> records) {
    ResultTable.Builder table = ResultTable.named(name);
    if (!records.isEmpty()) {
      RecordComponent[] components = records.get(0).getClass().getRecordComponents();
      check(TableSpec.named(name), components);
      for (Record record : records) {
        table.row(cells(record, components));
      }
    }
    return table.build();
  }

  private static void check(TableSpec spec, RecordComponent[] components) {
    List<String> declared = spec.columns().stream().map(c -> plain(c.name())).toList();
    List<String> given = Arrays.stream(components).map(c -> plain(c.getName())).toList();
    if (!declared.equals(given)) {
      throw new IllegalArgumentException(
          "table " + spec.name() + " declares " + declared + " but its rows have " + given);
    }
  }

  private static String plain(String name) {
    return name.replace("_", "").toLowerCase(Locale.ROOT);
  }

  private static Object[] cells(Record record, RecordComponent[] components) {
    Object[] cells = new Object[components.length];
    try {
      for (int i = 0; i < cells.length; i++) {
        cells[i] = components[i].getAccessor().invoke(record);
      }
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("cannot read " + record.getClass(), e);
    }
    return cells;
  }
}
