package pondtally.table;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
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
    Method[] accessors = accessors(spec, records.get(0).getClass());
    int[] order = order(spec, records, accessors);
    return ResultTable.of(
        spec,
        new AbstractList<>() {
          @Override
          public Object[] get(int index) {
            Record record = records.get(order == null ? index : order[index]);
            return cells(spec, record, accessors, accessors.length);
          }

          @Override
          public int size() {
            return records.size();
          }
        });
  }

  private static Method[] accessors(TableSpec spec, Class<? extends Record> kind) {
    RecordComponent[] components = kind.getRecordComponents();
    check(spec, components);
    Method[] accessors =
        Arrays.stream(components).map(RecordComponent::getAccessor).toArray(Method[]::new);
    // Spares a look at who asks, for each cell.
    Arrays.stream(accessors).forEach(accessor -> accessor.setAccessible(true));
    return accessors;
  }

  /** Where each row of the table stands in the list; null: where it stands in the table. */
  private static int[] order(TableSpec spec, List<? extends Record> records, Method[] accessors) {
    Comparator<Object[]> byKey = RowOrder.byKey(spec);
    if (isInOrder(spec, records, accessors, byKey)) {
      return null;
    }
    List<Object[]> keys = new ArrayList<>(records.size());
    Object[] last = new Object[spec.keyColumns()];
    for (Record record : records) {
      Object[] key = cells(spec, record, accessors, spec.keyColumns());
      share(key, last);
      keys.add(key);
      last = key;
    }
    Integer[] order = new Integer[keys.size()];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> byKey.compare(keys.get(a), keys.get(b)));
    return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
  }

  private static boolean isInOrder(
      TableSpec spec,
      List<? extends Record> records,
      Method[] accessors,
      Comparator<Object[]> byKey) {
    Object[] last = null;
    for (Record record : records) {
      Object[] key = cells(spec, record, accessors, spec.keyColumns());
      if (last != null && byKey.compare(last, key) > 0) {
        return false;
      }
      last = key;
    }
    return true;
  }

  /** Puts the cells of the row before in the place of those that are equal to them. */
  private static void share(Object[] key, Object[] before) {
    for (int i = 0; i < key.length; i++) {
      if (key[i] != null && key[i].equals(before[i])) {
        key[i] = before[i];
      }
    }
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
  private static Object[] cells(TableSpec spec, Record record, Method[] accessors, int count) {
    Object[] cells = new Object[count];
    try {
      for (int i = 0; i < count; i++) {
        cells[i] = accessors[i].invoke(record);
        CellText.check(spec.name(), spec.columns().get(i), cells[i]);
      }
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("cannot read " + record.getClass(), e);
    }
    return cells;
  }
}
