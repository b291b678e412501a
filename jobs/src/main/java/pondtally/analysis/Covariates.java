package pondtally.analysis;

import java.io.Serializable;
import java.util.List;
import pondtally.analysis.GroupKey.Grouping;

/** The groups of a service life that hazard models compare. */
record Covariates(String pipe, String kind, String watershed, String cohort, String build)
    implements Serializable {

  /** From the groups of a life, one of each grouping. */
  static Covariates of(List<GroupKey> groups) {
    return new Covariates(
        group(groups, Grouping.PIPE),
        group(groups, Grouping.KIND),
        group(groups, Grouping.WATERSHED),
        group(groups, Grouping.COHORT),
        group(groups, Grouping.BUILD));
  }

  private static String group(List<GroupKey> groups, Grouping grouping) {
    for (GroupKey key : groups) {
      if (key.grouping() == grouping) {
        return key.group();
      }
    }
    throw new IllegalArgumentException("no group by " + grouping);
  }

  /** The group by one of pipe, kind, watershed, cohort and build. */
  String by(Grouping grouping) {
    return switch (grouping) {
      case PIPE -> pipe;
      case KIND -> kind;
      case WATERSHED -> watershed;
      case COHORT -> cohort;
      case BUILD -> build;
      default -> throw new IllegalArgumentException("no covariate by " + grouping);
    };
  }

  /** The groups whose curves are also estimated from visit intervals. */
  List<GroupKey> curveGroups() {
    return List.of(
        GroupKey.ALL, new GroupKey(Grouping.PIPE, pipe), new GroupKey(Grouping.KIND, kind));
  }
}
