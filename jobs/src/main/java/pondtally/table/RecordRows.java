package pondtally.table;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Result tables from lists of records: the components of the record are the columns, in the same
 * order and with the same names ({@code deviceYears} is {@code device_years}).
 */
public final class RecordRows {

  private RecordRows() {}

  /**
   * The table declared as {@code name} with one row for each record. Cells are made when they are
   * asked for, so that a long list may hold its records packed; it must not change any more.
   */
  public static ResultTable table(String name, List<? extends Record> records) {
    TableSpec spec = TableSpec.named(name);
    if (records.isEmpty()) {
      return ResultTable.named(name).build();
    }
    RecordComponent[] components = records.get(0).getClass().getRecordComponents();
    check(spec, components);
    int[] order = order(spec, records, components);
    return ResultTable.of(
        spec,
        new AbstractList<>() {
          @Override
          public Object[] get(int index) {
            return cells(spec, records.get(order[index]), components, components.length);
          }

          @Override
          public int size() {
            return order.length;
          }
        });
  }

  /** Where each row of the table stands in the list. */
  private static int[] order(
      TableSpec spec, List<? extends Record> records, RecordComponent[] components) {
    List<Object[]> keys = new ArrayList<>(records.size());
    for (Record record : records) {
      keys.add(cells(spec, record, components, spec.keyColumns()));
    }
    Comparator<Object[]> byKey = RowOrder.byKey(spec);
    Integer[] order = new Integer[keys.size()];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> byKey.compare(keys.get(a), keys.get(b)));
    return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
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

  /** The first cells of a row. */
  private static Object[] cells(
      TableSpec spec, Record record, RecordComponent[] components, int count) {
    Object[] cells = new Object[count];
    try {
      for (int i = 0; i < count; i++) {
        cells[i] = components[i].getAccessor().invoke(record);
        CellText.check(spec.name(), spec.columns().get(i), cells[i]);
      }
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("cannot read " + record.getClass(), e);
    }
    return cells;
  }
}
