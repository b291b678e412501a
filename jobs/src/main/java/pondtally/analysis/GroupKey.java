package pondtally.analysis;

import java.io.Serializable;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/**
 * A group of devices, for example {@code pipe} / {@code dual 12 in}.
 *
 * @param grouping what the groups are made by
 * @param group the group's value; {@code all} where there is one group
 */
public record GroupKey(Grouping grouping, String group)
    implements Comparable<GroupKey>, Serializable {

  /** The group of all devices. */
  public static final GroupKey ALL = new GroupKey(Grouping.ALL, "all");

  /** What is said where the value was not recorded. */
  public static final String UNKNOWN = "unknown";

  /** Groupings of the analyses that are not made for every small group. */
  static final Set<Grouping> MAIN =
      Collections.unmodifiableSet(
          EnumSet.of(
              Grouping.ALL,
              Grouping.PIPE,
              Grouping.KIND,
              Grouping.WATERSHED,
              Grouping.BUILD,
              Grouping.SETTING));

  private static final Comparator<GroupKey> ORDER =
      Comparator.comparing(GroupKey::grouping).thenComparing(GroupKey::group);

  /** The text's hash is kept by the text itself; groupings are few. */
  @Override
  public int hashCode() {
    return group.hashCode() + 31 * grouping.ordinal();
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof GroupKey key && grouping == key.grouping && group.equals(key.group));
  }

  @Override
  public int compareTo(GroupKey other) {
    return ORDER.compare(this, other);
  }

  /** What the groups of a program can be made by. */
  public enum Grouping {
    ALL,
    PIPE,
    KIND,
    WATERSHED,
    PIPE_IN_WATERSHED,
    CREW,
    COHORT,
    BUILD,
    SETTING;

    /** As written in result tables. */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
