package pondtally.history;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Stretches of time that do not touch or overlap, in order; immutable. Half days since 1970-01-01.
 */
public final class Stretches implements Serializable {

  private static final long serialVersionUID = 1;

  /** No time at all. */
  public static final Stretches NONE = new Stretches(List.of());

  private final List<Stretch> list;

  private Stretches(List<Stretch> list) {
    this.list = list;
  }

  /** The time covered by any of {@code stretches}, in whatever order they come. */
  public static Stretches of(List<Stretch> stretches) {
    List<Stretch> sorted = new ArrayList<>(stretches);
    sorted.sort(Comparator.comparingInt(Stretch::from));
    List<Stretch> merged = new ArrayList<>();
    for (Stretch next : sorted) {
      Stretch last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && next.from() <= last.to()) {
        merged.set(merged.size() - 1, new Stretch(last.from(), Math.max(last.to(), next.to())));
      } else {
        merged.add(next);
      }
    }
    return new Stretches(List.copyOf(merged));
  }

  /** [from, to), or nothing where {@code to} is not after {@code from}. */
  public static Stretches between(int from, int to) {
    return to > from ? new Stretches(List.of(new Stretch(from, to))) : NONE;
  }

  /** The time covered by any of {@code all}. */
  public static Stretches union(List<Stretches> all) {
    Stretches only = NONE;
    List<Stretch> several = null;
    for (Stretches one : all) {
      if (several == null && only.isEmpty()) {
        only = one;
      } else if (!one.isEmpty()) {
        several = several == null ? new ArrayList<>(only.list) : several;
        several.addAll(one.list);
      }
    }
    return several == null ? only : of(several);
  }

  /** The stretches, in order. */
  public List<Stretch> list() {
    return list;
  }

  public boolean isEmpty() {
    return list.isEmpty();
  }

  /** The time covered by either. */
  public Stretches union(Stretches other) {
    return union(List.of(this, other));
  }

  /** The time covered by both. */
  public Stretches intersect(Stretches other) {
    List<Stretch> both = new ArrayList<>();
    int j = 0;
    for (Stretch mine : list) {
      while (j < other.list.size() && other.list.get(j).to() <= mine.from()) {
        j++;
      }
      for (int k = j; k < other.list.size() && other.list.get(k).from() < mine.to(); k++) {
        Stretch theirs = other.list.get(k);
        both.add(
            new Stretch(Math.max(mine.from(), theirs.from()), Math.min(mine.to(), theirs.to())));
      }
    }
    return new Stretches(List.copyOf(both));
  }

  /** The part within [from, to). */
  public Stretches within(int from, int to) {
    boolean holdsAll =
        !list.isEmpty() && list.get(0).from() >= from && list.get(list.size() - 1).to() <= to;
    if (holdsAll) {
      return this;
    }
    return intersect(between(from, to));
  }

  /** The part not covered by {@code other}. */
  public Stretches minus(Stretches other) {
    List<Stretch> rest = new ArrayList<>();
    for (Stretch mine : list) {
      int from = mine.from();
      for (Stretch theirs : other.list) {
        if (theirs.to() <= from || theirs.from() >= mine.to()) {
          continue;
        }
        if (theirs.from() > from) {
          rest.add(new Stretch(from, theirs.from()));
        }
        from = Math.max(from, theirs.to());
      }
      if (from < mine.to()) {
        rest.add(new Stretch(from, mine.to()));
      }
    }
    return new Stretches(List.copyOf(rest));
  }

  /** Length, half days. */
  public long halfDays() {
    long sum = 0;
    for (Stretch stretch : list) {
      sum += (long) stretch.to() - stretch.from();
    }
    return sum;
  }

  /** Length, days. */
  public double days() {
    return halfDays() / 2.0;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Stretches that && list.equals(that.list);
  }

  @Override
  public int hashCode() {
    return list.hashCode();
  }

  @Override
  public String toString() {
    return list.toString();
  }
}
