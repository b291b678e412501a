package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import pondtally.analysis.SeasonUnit.Kind;

/**
 * What visits, repairs and replacements of one pipe type cost and take. What fewer than three
 * records of the type tell is taken from all devices. A repair without any record counts as a
 * visit, a replacement as a repair.
 *
 * @param visit null: no visit of the program has a recorded cost, so no cost can be foreseen
 * @param replacedShare share of failures ended that were ended by replacement; 0 where none ever
 *     was
 * @param damagePerYearUsd mean yearly damage that one device stands against; null: nowhere recorded
 * @param borrowed what was taken from all devices, in words; null where nothing was
 */
record SeasonUnits(
    SeasonUnit visit,
    SeasonUnit repair,
    SeasonUnit replacement,
    double replacedShare,
    Double damagePerYearUsd,
    String borrowed) {

  private static final double FEWEST = 3;

  static SeasonUnits of(SeasonTally tally, GroupKey key, long seed) {
    List<String> borrowed = new ArrayList<>();
    SeasonUnit visit = unit(tally, key, Kind.VISIT, "visit", seed, borrowed);
    SeasonUnit repair = unit(tally, key, Kind.REPAIR, "repair", seed, borrowed);
    SeasonUnit replacement = unit(tally, key, Kind.REPLACEMENT, "replacement", seed, borrowed);
    double restarts =
        tally.total(key, BenefitMeasure.REPAIRED) + tally.total(key, BenefitMeasure.REPLACED);
    GroupKey shares = from(key, restarts, "replaced share", borrowed);
    double replaced = tally.total(shares, BenefitMeasure.REPLACED);
    double all = replaced + tally.total(shares, BenefitMeasure.REPAIRED);
    GroupKey at = from(key, tally.total(key, BenefitMeasure.AT_DAMAGE), "damage", borrowed);
    double known = tally.total(at, BenefitMeasure.AT_DAMAGE);
    SeasonUnit mended = repair == null ? visit : repair;
    return new SeasonUnits(
        visit,
        mended,
        replacement == null ? mended : replacement,
        all > 0 ? replaced / all : 0,
        known > 0 ? (Double) (tally.total(at, BenefitMeasure.DAMAGE_USD) / known) : null,
        borrowed.isEmpty() ? null : String.join(", ", borrowed));
  }

  private static SeasonUnit unit(
      SeasonTally tally, GroupKey key, Kind kind, String name, long seed, List<String> borrowed) {
    GroupKey from = from(key, tally.total(key, kind.count()), name, borrowed);
    return SeasonUnit.of(tally, from, kind, seed);
  }

  private static GroupKey from(GroupKey key, double count, String name, List<String> borrowed) {
    if (key.equals(GroupKey.ALL) || count >= FEWEST) {
      return key;
    }
    borrowed.add(name);
    return GroupKey.ALL;
  }
}
