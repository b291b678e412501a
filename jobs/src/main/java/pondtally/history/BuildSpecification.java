package pondtally.history;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import pondtally.record.Install;

/**
 * Whether a device was built as the trade does it: each item is judged only where it applies and is
 * recorded; under 6 items judged, the build is not judged; else it is met if every one of them is.
 * Common practice, no source.
 */
public final class BuildSpecification {

  /** Items that have to be judged before a build is. */
  public static final int ITEMS_NEEDED = 6;

  private static final Set<SpecificationItem> ALL = EnumSet.allOf(SpecificationItem.class);

  private BuildSpecification() {}

  /** Judges a design by all items. */
  public static BuildJudgement judge(Install design) {
    return judge(design, ALL);
  }

  /**
   * Judges a design by some of the items.
   *
   * @param items a program's own choice of items, each once
   */
  public static BuildJudgement judge(Install design, Collection<SpecificationItem> items) {
    int judged = 0;
    int met = 0;
    for (SpecificationItem item : items) {
      Boolean verdict = item.verdict(design);
      judged += verdict == null ? 0 : 1;
      met += verdict != null && verdict ? 1 : 0;
    }
    return new BuildJudgement(met, judged, group(met, judged));
  }

  private static BuildGroup group(int met, int judged) {
    if (judged < ITEMS_NEEDED) {
      return BuildGroup.NOT_JUDGED;
    }
    return met == judged ? BuildGroup.MET : BuildGroup.NOT_MET;
  }
}
