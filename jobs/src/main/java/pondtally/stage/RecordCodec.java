package pondtally.stage;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import pondtally.pack.ByteSink;
import pondtally.pack.ByteSource;
import pondtally.record.Origin;
import pondtally.record.Sourced;

/**
 * Records of all kinds as compact bytes and back: what is shuffled is bytes, because objects would
 * cost several times the room and the time. One codec serves every record: it goes through the
 * components in their order.
 */
final class RecordCodec {

  private static final Class<?>[] KINDS =
      Arrays.stream(Sourced.class.getPermittedSubclasses())
          .sorted((a, b) -> a.getName().compareTo(b.getName()))
          .toArray(Class<?>[]::new);
  private static final RecordCodec[] CODECS =
      Arrays.stream(KINDS).map(RecordCodec::new).toArray(RecordCodec[]::new);
  private static final Map<Class<?>, Integer> NUMBER_OF_KIND = numbers();

  private final MethodHandle constructor;
  private final MethodHandle[] accessors;
  private final Class<?>[] types;
  private final Object[][] constants;

  /** For records of one kind whose components are texts, numbers, flags, codes or places. */
  RecordCodec(Class<?> kind) {
    RecordComponent[] components = kind.getRecordComponents();
    types = Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    constants = Arrays.stream(types).map(Class::getEnumConstants).toArray(Object[][]::new);
    accessors = new MethodHandle[types.length];
    try {
      MethodHandles.Lookup lookup = MethodHandles.lookup();
      for (int i = 0; i < types.length; i++) {
        accessors[i] =
            lookup
                .unreflect(components[i].getAccessor())
                .asType(MethodType.methodType(Object.class, Object.class));
      }
      constructor =
          lookup
              .findConstructor(kind, MethodType.methodType(void.class, types))
              .asSpreader(Object[].class, types.length)
              .asType(MethodType.methodType(Object.class, Object[].class));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(kind + " cannot be taken apart", e);
    }
  }

  private static Map<Class<?>, Integer> numbers() {
    Map<Class<?>, Integer> numbers = new HashMap<>();
    for (int i = 0; i < KINDS.length; i++) {
      numbers.put(KINDS[i], i);
    }
    return numbers;
  }

  /** Appends a record. */
  static void write(Sourced record, ByteSink out) {
    int kind = NUMBER_OF_KIND.get(record.getClass());
    out.writeNumber(kind);
    CODECS[kind].writeComponents(record, out);
  }

  /** Reads the next record. */
  static Sourced read(ByteSource in) {
    return (Sourced) CODECS[(int) in.readNumber()].readComponents(in);
  }

  /** Appends a record of this codec's kind. */
  void writeComponents(Object record, ByteSink out) {
    Object[] values = new Object[types.length];
    long present = 0;
    try {
      for (int i = 0; i < values.length; i++) {
        values[i] = (Object) accessors[i].invokeExact(record);
        present |= values[i] == null ? 0 : 1L << i;
      }
    } catch (Throwable e) {
      throw new IllegalStateException("cannot read a " + record.getClass(), e);
    }
    out.writeNumber(present);
    for (int i = 0; i < values.length; i++) {
      if (values[i] != null) {
        writeValue(values[i], out);
      }
    }
  }

  private static void writeValue(Object value, ByteSink out) {
    if (value instanceof String text) {
      out.writeText(text);
    } else if (value instanceof Integer number) {
      out.writeSigned(number);
    } else if (value instanceof Long number) {
      out.writeSignedLong(number);
    } else if (value instanceof Double number) {
      out.writeDouble(number);
    } else if (value instanceof Enum<?> constant) {
      out.writeNumber(constant.ordinal());
    } else if (value instanceof Boolean flag) {
      out.writeNumber(flag ? 1 : 0);
    } else if (value instanceof Origin origin) {
      out.writeNumber(origin.file());
      out.writeNumber(origin.sheet() * 2L + (origin.changed() ? 1 : 0));
      out.writeNumber(origin.row());
    } else {
      throw new IllegalStateException("no way to write a " + value.getClass());
    }
  }

  /** Reads the next record of this codec's kind. */
  Object readComponents(ByteSource in) {
    long present = in.readNumber();
    Object[] values = new Object[types.length];
    for (int i = 0; i < values.length; i++) {
      if ((present & 1L << i) != 0) {
        values[i] = readValue(types[i], constants[i], in);
      }
    }
    try {
      return (Object) constructor.invokeExact(values);
    } catch (Throwable e) {
      throw new IllegalStateException("cannot make a record of " + Arrays.toString(values), e);
    }
  }

  private static Object readValue(Class<?> type, Object[] constants, ByteSource in) {
    if (type == String.class) {
      return in.readText();
    }
    if (type == int.class || type == Integer.class) {
      return in.readSigned();
    }
    if (type == long.class || type == Long.class) {
      return in.readSignedLong();
    }
    if (type == double.class || type == Double.class) {
      return in.readDouble();
    }
    if (constants != null) {
      return constants[(int) in.readNumber()];
    }
    if (type == boolean.class || type == Boolean.class) {
      return in.readNumber() == 1;
    }
    int file = (int) in.readNumber();
    long sheet = in.readNumber();
    return new Origin(file, (int) (sheet / 2), (int) in.readNumber(), sheet % 2 == 1);
  }
}
