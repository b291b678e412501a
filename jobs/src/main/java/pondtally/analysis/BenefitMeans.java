package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Mean costs of a group, in the data and in each resample. What fewer than three visits of the
 * group tell is taken from all devices; a repair without any record costs what a visit does, a
 * replacement what building does. Damage and building are always the group's own.
 */
final class BenefitMeans {

  private static final double FEWEST = 3;

  private final BenefitSums own;
  private final BenefitSums all;
  private final List<String> borrowed = new ArrayList<>();
  private final boolean ownVisits;
  private final boolean ownRepairs;
  private final boolean ownReplacements;
  private final boolean ownShare;

  BenefitMeans(BenefitSums own, BenefitSums all) {
    this.own = own;
    this.all = all;
    ownVisits = enough("visit", own.total(BenefitMeasure.VISITS));
    ownRepairs = enough("repair", own.total(BenefitMeasure.REPAIRS));
    ownReplacements = enough("replacement", own.total(BenefitMeasure.REPLACEMENTS));
    ownShare =
        enough(
            "replaced share",
            own.total(BenefitMeasure.REPAIRED) + own.total(BenefitMeasure.REPLACED));
  }

  private boolean enough(String name, double count) {
    boolean enough = own == all || count >= FEWEST;
    if (!enough) {
      borrowed.add(name);
    }
    return enough;
  }

  /** What was taken from all devices, in words; empty where nothing was. */
  String borrowed() {
    return String.join(", ", borrowed);
  }

  /** Share of restarts that were replacements; 0 where nothing was ever restarted. */
  double replacedShare() {
    BenefitSums from = ownShare ? own : all;
    double replaced = from.total(BenefitMeasure.REPLACED);
    double restarts = replaced + from.total(BenefitMeasure.REPAIRED);
    return restarts > 0 ? replaced / restarts : 0;
  }

  /** Means in the data; empty where damage, building or visits are of unknown cost. */
  Optional<BenefitUnits> units() {
    return units(
        mean(own, BenefitMeasure.DAMAGE_USD, BenefitMeasure.AT_DAMAGE),
        mean(own, BenefitMeasure.BUILD_USD, BenefitMeasure.BUILDS),
        mean(ownVisits ? own : all, BenefitMeasure.VISIT_USD, BenefitMeasure.VISITS),
        mean(ownRepairs ? own : all, BenefitMeasure.REPAIR_USD, BenefitMeasure.REPAIRS),
        mean(
            ownReplacements ? own : all,
            BenefitMeasure.REPLACEMENT_USD,
            BenefitMeasure.REPLACEMENTS));
  }

  /** Means in one resample; empty where one of the first three is undefined in it. */
  Optional<BenefitUnits> units(int resample) {
    return units(
        mean(own, BenefitMeasure.DAMAGE_USD, BenefitMeasure.AT_DAMAGE, resample),
        mean(own, BenefitMeasure.BUILD_USD, BenefitMeasure.BUILDS, resample),
        mean(ownVisits ? own : all, BenefitMeasure.VISIT_USD, BenefitMeasure.VISITS, resample),
        mean(ownRepairs ? own : all, BenefitMeasure.REPAIR_USD, BenefitMeasure.REPAIRS, resample),
        mean(
            ownReplacements ? own : all,
            BenefitMeasure.REPLACEMENT_USD,
            BenefitMeasure.REPLACEMENTS,
            resample));
  }

  private static Optional<BenefitUnits> units(
      Double damage, Double build, Double visit, Double repair, Double replacement) {
    if (damage == null || build == null || visit == null) {
      return Optional.empty();
    }
    return Optional.of(
        new BenefitUnits(
            damage,
            build,
            visit,
            repair == null ? visit : repair,
            replacement == null ? build : replacement));
  }

  private static Double mean(BenefitSums sums, BenefitMeasure usd, BenefitMeasure count) {
    double n = sums.total(count);
    return n > 0 ? (Double) (sums.total(usd) / n) : null;
  }

  private static Double mean(
      BenefitSums sums, BenefitMeasure usd, BenefitMeasure count, int resample) {
    double n = sums.total(count, resample);
    return n > 0 ? (Double) (sums.total(usd, resample) / n) : null;
  }
}
