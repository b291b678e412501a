package pondtally.intake;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import pondtally.record.Area;
import pondtally.record.Budget;
import pondtally.record.Expense;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;
import pondtally.record.Sourced;
import pondtally.record.Visit;
import pondtally.schema.TableSchema;

/**
 * Makes the record of a row from the values of its fields. A record's components and its table's
 * fields have the same names ({@code pipeDiameterIn}, {@code pipe_diameter_in}), so the one is
 * found from the other; a component without a field stops the program at its start.
 */
final class RecordFactory {

  private static final Map<String, Class<? extends Sourced>> RECORDS =
      Map.of(
          "sites", Site.class,
          "installs", Install.class,
          "materials", MaterialLine.class,
          "revisits", Visit.class,
          "removals", Removal.class,
          "properties", Property.class,
          "areas", Area.class,
          "budgets", Budget.class,
          "expenses", Expense.class,
          "requests", Request.class);

  private static final int BEFORE_FIELDS = 2;
  private static final Map<String, RecordFactory> BY_TABLE = new HashMap<>();

  static {
    RECORDS.forEach(
        (table, type) -> BY_TABLE.put(table, new RecordFactory(TableSchema.named(table), type)));
  }

  private final Class<?>[] types;
  private final int[] positions;
  private final MethodHandle constructor;

  private RecordFactory(TableSchema table, Class<? extends Sourced> type) {
    RecordComponent[] components = type.getRecordComponents();
    types = new Class<?>[table.fields().size()];
    positions = new int[components.length - BEFORE_FIELDS];
    for (int i = 0; i < positions.length; i++) {
      RecordComponent component = components[i + BEFORE_FIELDS];
      positions[i] = table.field(snakeCase(component.getName())).position();
      types[positions[i]] = component.getType();
    }
    constructor = constructor(type, components);
  }

  private static MethodHandle constructor(Class<?> type, RecordComponent[] components) {
    Class<?>[] parameters =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return MethodHandles.lookup()
          .findConstructor(type, MethodType.methodType(void.class, parameters))
          .asSpreader(Object[].class, parameters.length)
          .asType(MethodType.methodType(Sourced.class, Object[].class));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " has no canonical constructor", e);
    }
  }

  private static String snakeCase(String name) {
    return name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }

  /** The factory of a table; null for the price index, whose rows are no records. */
  static RecordFactory of(String table) {
    return BY_TABLE.get(table);
  }

  /** Java type of the values of the field at {@code position}. */
  Class<?> typeOf(int position) {
    return types[position];
  }

  /**
   * The record.
   *
   * @param values by position of the field; null: not known
   */
  Sourced make(Origin origin, String partner, Object[] values) {
    Object[] arguments = new Object[positions.length + BEFORE_FIELDS];
    arguments[0] = origin;
    arguments[1] = partner;
    for (int i = 0; i < positions.length; i++) {
      arguments[i + BEFORE_FIELDS] = values[positions[i]];
    }
    try {
      return (Sourced) constructor.invokeExact(arguments);
    } catch (Throwable e) {
      throw new IllegalStateException("no record from " + Arrays.toString(arguments), e);
    }
  }
}
