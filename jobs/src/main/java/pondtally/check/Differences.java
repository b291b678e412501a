package pondtally.check;

import java.util.ArrayList;
import java.util.List;
import pondtally.record.Sourced;

/** How two rows about the same thing differ, in words. */
final class Differences {

  private static final int SHOWN = 3;

  private Differences() {}

  /**
   * {@code watershed ("99010203" there, "99010204" here) and county ("Alder" there, nothing here)};
   * the first three, and how many more.
   */
  static <T extends Sourced> String between(T there, T here) {
    List<String> all = Fields.differences(there, here);
    if (all.size() <= SHOWN) {
      return Words.list(all);
    }
    List<String> some = new ArrayList<>(all.subList(0, SHOWN));
    some.add(Words.count(all.size() - SHOWN, "more field"));
    return Words.list(some);
  }
}
