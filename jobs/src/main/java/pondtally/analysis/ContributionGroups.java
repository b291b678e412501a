package pondtally.analysis;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pondtally.analysis.GroupKey.Grouping;

/**
 * The group that an amount counts in, by each grouping; empty where it is not divided by it, as a
 * pond with two devices is not by pipe type.
 *
 * @param cells one text a grouping, in the order of {@link #GROUPINGS}; empty: not divided
 */
public record ContributionGroups(List<String> cells) implements Comparable<ContributionGroups> {

  /** The groupings, in the order of the table's columns. */
  public static final List<Grouping> GROUPINGS =
      List.of(
          Grouping.WATERSHED,
          Grouping.PIPE,
          Grouping.KIND,
          Grouping.CREW,
          Grouping.COHORT,
          Grouping.BUILD,
          Grouping.SETTING);

  /** In no group but that of all. */
  static final ContributionGroups NONE = ofCells(new String[] {"", "", "", "", "", "", ""});

  static ContributionGroups ofCells(String[] cells) {
    return new ContributionGroups(List.of(cells));
  }

  /** The groups of a device or a life. */
  static ContributionGroups of(List<GroupKey> keys) {
    Map<Grouping, String> byGrouping = new EnumMap<>(Grouping.class);
    keys.forEach(key -> byGrouping.put(key.grouping(), key.group()));
    return ofCells(
        GROUPINGS.stream().map(g -> byGrouping.getOrDefault(g, "")).toArray(String[]::new));
  }

  /** Where only watershed and setting divide. */
  static ContributionGroups ofPlace(String watershed, String setting) {
    return of(
        List.of(
            new GroupKey(Grouping.WATERSHED, watershed), new GroupKey(Grouping.SETTING, setting)));
  }

  /** By the cells, one after another. */
  @Override
  public int compareTo(ContributionGroups other) {
    return Arrays.compare(cells.toArray(String[]::new), other.cells.toArray(String[]::new));
  }
}
