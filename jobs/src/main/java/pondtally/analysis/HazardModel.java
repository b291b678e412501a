package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.HazardDesign;
import pondtally.stats.HazardPatterns;

/**
 * A hazard model: which groupings it compares, at which of their levels, and whether within
 * watersheds. The reference is the level with most devices, for build the one that met the
 * specification.
 *
 * @param levels of each term, the reference first; lives at other levels are not in the model
 * @param leftOut groups with too few devices or no value, by term
 */
record HazardModel(
    String name,
    List<Grouping> terms,
    boolean byWatershed,
    List<List<String>> levels,
    List<GroupKey> leftOut,
    HazardDesign design)
    implements Serializable {

  private static final String FIRST_BUILD = "met";

  static HazardModel of(
      String name, boolean byWatershed, LifeTally lives, int groupsBelow, Grouping... terms) {
    List<List<String>> levels = new ArrayList<>();
    List<GroupKey> leftOut = new ArrayList<>();
    HazardDesign design = HazardDesign.empty();
    for (Grouping term : terms) {
      List<GroupKey> kept = new ArrayList<>(Comparisons.groups(lives, term, groupsBelow));
      lives.groups(term).stream().filter(key -> !kept.contains(key)).forEach(leftOut::add);
      kept.sort(
          Comparator.comparing((GroupKey key) -> !key.group().equals(FIRST_BUILD))
              .thenComparing(key -> -lives.devices(key))
              .thenComparing(key -> key));
      List<String> names = kept.stream().map(GroupKey::group).toList();
      levels.add(names);
      if (!names.isEmpty()) {
        List<String> others = names.subList(1, names.size()).stream().sorted().toList();
        design = design.withFactor(term.code(), names.get(0), others);
      }
    }
    return new HazardModel(
        name, List.of(terms), byWatershed, List.copyOf(levels), List.copyOf(leftOut), design);
  }

  /** Whether at least one of its terms has two levels to compare, and each has one. */
  boolean compares() {
    return !design.columns().isEmpty() && levels.stream().noneMatch(List::isEmpty);
  }

  /** Whether a life is at levels that the model has. */
  boolean includes(Covariates covariates) {
    for (int i = 0; i < terms.size(); i++) {
      if (!levels.get(i).contains(covariates.by(terms.get(i)))) {
        return false;
      }
    }
    return true;
  }

  /** The numbers that stand for a life's levels. */
  double[] encode(Covariates covariates) {
    return design.encode(terms.stream().map(covariates::by).toArray());
  }

  /** The lives among which a life is compared. */
  String stratum(Covariates covariates) {
    return byWatershed ? covariates.watershed() : "";
  }

  /** The lives that the model includes. */
  HazardPatterns patterns(HazardTally tally) {
    HazardPatterns patterns = HazardPatterns.ofColumns(design.columns().size());
    tally
        .lives()
        .forEach(
            (covariates, counts) -> {
              if (includes(covariates)) {
                double[] x = encode(covariates);
                String stratum = stratum(covariates);
                counts.forEach(
                    row ->
                        patterns.add(
                            stratum,
                            x,
                            row.entryDays(),
                            row.leftDays(),
                            row.failed(),
                            row.count()));
              }
            });
    return patterns;
  }
}
