package pondtally.check;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import pondtally.record.Origin;

/** Makes a row from the few fields a test is about; dates are written as text. */
final class TestRow {

  private TestRow() {}

  /** Of partner {@code north}, in file 0, unchanged on the way in. */
  static <T extends Record> T of(Class<T> type, int row, Object... fields) {
    return at(type, new Origin(0, 0, row, false), fields);
  }

  /** Fields as name, value, name, value; all others are empty or zero. */
  static <T extends Record> T at(Class<T> type, Origin origin, Object... fields) {
    Map<String, Object> values = new HashMap<>();
    values.put("origin", origin);
    values.put("partner", "north");
    for (int i = 0; i < fields.length; i += 2) {
      values.put((String) fields[i], fields[i + 1]);
    }
    RecordComponent[] components = type.getRecordComponents();
    Object[] arguments =
        Arrays.stream(components).map(c -> value(c, values.remove(c.getName()))).toArray();
    if (!values.isEmpty()) {
      throw new IllegalArgumentException("no such field: " + values);
    }
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return type.getDeclaredConstructor(types).newInstance(arguments);
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static Object value(RecordComponent component, Object given) {
    Class<?> type = component.getType();
    if (given == null) {
      return type == int.class ? (Object) 0 : type == double.class ? (Object) 0.0 : null;
    }
    boolean wantsNumber = type == int.class || type == Integer.class;
    return wantsNumber && given instanceof String date ? (Object) day(date) : given;
  }

  static int day(String date) {
    return (int) LocalDate.parse(date).toEpochDay();
  }
}
