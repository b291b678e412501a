package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Values that come again and again, each numbered where it first comes. */
final class Numbering<T extends Serializable> implements Serializable {

  private static final long serialVersionUID = 1;

  private final List<T> values = new ArrayList<>();
  private transient Map<T, Integer> numbers = new HashMap<>();

  /** The number of a value, from 0; not after it was sent elsewhere. */
  int of(T value) {
    Integer known = numbers.get(value);
    if (known != null) {
      return known;
    }
    values.add(value);
    numbers.put(value, values.size() - 1);
    return values.size() - 1;
  }

  /** The value that has a number. */
  T get(int number) {
    return values.get(number);
  }

  /** No more values will be numbered. */
  void close() {
    numbers = null;
  }
}
