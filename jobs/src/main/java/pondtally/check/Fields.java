package pondtally.check;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import pondtally.record.Sourced;

/**
 * The fields of a row by name, so that rows of every table can be compared in the same way. Where a
 * row stands and who sent it are not part of what it says.
 */
final class Fields {

  private static final ClassValue<List<RecordComponent>> CONTENT =
      new ClassValue<>() {
        @Override
        protected List<RecordComponent> computeValue(Class<?> type) {
          List<RecordComponent> content =
              Arrays.stream(type.getRecordComponents())
                  .filter(c -> !c.getName().equals("origin") && !c.getName().equals("partner"))
                  .toList();
          // Reading is quicker where access is not checked each time.
          content.forEach(field -> field.getAccessor().setAccessible(true));
          return content;
        }
      };

  private static final int START_FIELDS = 2;

  private Fields() {}

  /** What the row says: its values in the order of its fields, null for empty. */
  static List<Object> content(Sourced row) {
    List<Object> values = new ArrayList<>();
    for (RecordComponent field : CONTENT.get(row.getClass())) {
      values.add(read(field, row));
    }
    return values;
  }

  /** The first of {@link #content}: rows that differ in them differ. */
  static List<Object> start(Sourced row) {
    List<RecordComponent> fields = CONTENT.get(row.getClass());
    List<Object> values = new ArrayList<>(START_FIELDS);
    for (int i = 0; i < Math.min(START_FIELDS, fields.size()); i++) {
      values.add(read(fields.get(i), row));
    }
    return values;
  }

  /** How many fields hold something. */
  static int filled(Sourced row) {
    int filled = 0;
    for (Object value : content(row)) {
      filled += value == null ? 0 : 1;
    }
    return filled;
  }

  /** {@code watershed ("99010203" there, "99010204" here)} for each field that differs. */
  static <T extends Sourced> List<String> differences(T there, T here) {
    List<String> texts = new ArrayList<>();
    for (RecordComponent field : CONTENT.get(here.getClass())) {
      Object first = read(field, there);
      Object second = read(field, here);
      if (!Objects.equals(first, second)) {
        texts.add(difference(nameOf(field), first, second));
      }
    }
    return texts;
  }

  /** Two numbers that would be rounded to the same are shown with all their digits. */
  private static String difference(String name, Object there, Object here) {
    String first = Words.value(name, there);
    String second = Words.value(name, here);
    boolean isTooShort = first.equals(second) && there instanceof Double && here instanceof Double;
    return "%s (%s there, %s here)"
        .formatted(
            name,
            isTooShort ? Words.inFull((Double) there) : first,
            isTooShort ? Words.inFull((Double) here) : second);
  }

  /** The same row without the value of one optional field. */
  static <T extends Sourced> T without(T row, String field) {
    RecordComponent[] all = row.getClass().getRecordComponents();
    Object[] values =
        Arrays.stream(all).map(c -> nameOf(c).equals(field) ? null : read(c, row)).toArray();
    Class<?>[] types = Arrays.stream(all).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      @SuppressWarnings("unchecked") // the canonical constructor of row's own class
      Constructor<T> constructor = (Constructor<T>) row.getClass().getDeclaredConstructor(types);
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("no copy of " + row.getClass() + " without " + field, e);
    }
  }

  private static Object read(RecordComponent field, Sourced row) {
    try {
      return field.getAccessor().invoke(row);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("unreadable field " + field, e);
    }
  }

  /** Our name of a field, as it stands in files: {@code installedOn} is {@code installed_on}. */
  private static String nameOf(RecordComponent field) {
    return field.getName().replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }
}
