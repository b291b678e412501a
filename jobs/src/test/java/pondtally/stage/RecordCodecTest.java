package pondtally.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pondtally.pack.ByteSink;
import pondtally.pack.ByteSource;
import pondtally.record.Origin;
import pondtally.record.Sourced;

class RecordCodecTest {

  private static final String[] TEXTS = {
    "", "HB-014", "Überlauf", "橋", "a\u0000b", "x".repeat(300)
  };
  private static final int[] NUMBERS = {
    0, 1, -1, 127, 128, 20_000, Integer.MAX_VALUE, Integer.MIN_VALUE
  };
  private static final double[] DOUBLES = {0, -0.0, 0.1, -1e300, Double.MIN_VALUE, 12};

  /**
   * Every kind of record, with every mixture of missing and present values that a thousand draws
   * give.
   */
  @Test
  void everyRecordComesBackAsItWas() throws ReflectiveOperationException {
    Random random = new Random(7);
    List<Sourced> records = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      for (Class<?> kind : Sourced.class.getPermittedSubclasses()) {
        records.add(random(kind, random));
      }
    }
    ByteSink sink = new ByteSink();
    records.forEach(record -> RecordCodec.write(record, sink));
    ByteSource source = new ByteSource(sink.toBytes());
    for (Sourced record : records) {
      assertEquals(record, RecordCodec.read(source));
    }
    assertFalse(source.hasMore());
  }

  private static Sourced random(Class<?> kind, Random random) throws ReflectiveOperationException {
    RecordComponent[] components = kind.getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Object[] values = new Object[types.length];
    for (int i = 0; i < values.length; i++) {
      boolean needed = types[i].isPrimitive() || types[i] == Origin.class;
      values[i] = needed || random.nextBoolean() ? value(types[i], random) : null;
    }
    Constructor<?> constructor = kind.getDeclaredConstructor(types);
    return (Sourced) constructor.newInstance(values);
  }

  private static Object value(Class<?> type, Random random) {
    if (type == String.class) {
      return TEXTS[random.nextInt(TEXTS.length)];
    }
    if (type == int.class || type == Integer.class) {
      return NUMBERS[random.nextInt(NUMBERS.length)];
    }
    if (type == double.class || type == Double.class) {
      return DOUBLES[random.nextInt(DOUBLES.length)];
    }
    if (type == Boolean.class) {
      return random.nextBoolean();
    }
    if (type == Origin.class) {
      return new Origin(
          random.nextInt(10_000),
          random.nextInt(50),
          random.nextInt(2_000_000),
          random.nextBoolean());
    }
    return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
  }
}
