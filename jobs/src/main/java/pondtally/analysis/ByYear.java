package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;

/**
 * Sums of each year and of the whole record ({@link Years#WHOLE}); a year's are found by counting,
 * without a search.
 */
final class ByYear<S extends Serializable> implements Serializable {

  private static final long serialVersionUID = 1;

  private final ArrayList<S> years = new ArrayList<>();
  private int first;
  private S whole;

  /** What is done with the sums of each year. */
  interface Action<S> {
    void accept(int year, S sums);
  }

  /** Sums of a year, new ones where it has none. */
  S of(int year, Supplier<S> empty) {
    if (year == Years.WHOLE) {
      whole = whole == null ? empty.get() : whole;
      return whole;
    }
    S own = get(year);
    return own == null ? put(year, empty.get()) : own;
  }

  private S put(int year, S sums) {
    first = years.isEmpty() ? year : first;
    if (year < first) {
      years.addAll(0, nothing(first - year));
      first = year;
    }
    years.addAll(nothing(year - first + 1 - years.size()));
    years.set(year - first, sums);
    return sums;
  }

  private List<S> nothing(int count) {
    return Collections.nCopies(Math.max(0, count), null);
  }

  /** Sums of a year; null where it has none. */
  S get(int year) {
    if (year == Years.WHOLE) {
      return whole;
    }
    int i = year - first;
    return i < 0 || i >= years.size() ? null : years.get(i);
  }

  /** Years in order, the whole record last. */
  void forEach(Action<S> action) {
    for (int i = 0; i < years.size(); i++) {
      if (years.get(i) != null) {
        action.accept(first + i, years.get(i));
      }
    }
    if (whole != null) {
      action.accept(Years.WHOLE, whole);
    }
  }
}
