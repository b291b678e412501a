package pondtally.analysis;

import java.util.List;
import java.util.OptionalDouble;
import pondtally.stats.CountedLives;
import pondtally.stats.IntervalCounts;
import pondtally.stats.Limits;
import pondtally.stats.SurvivalCurve;
import pondtally.stats.SurvivalFigures;

/**
 * The same lives with each failure dated on the day it was found, in the middle between the last
 * good visit and that day, or left where the visits leave it: what the choice does to survival.
 * Where {@code interval} needs one day it is the middle, so that it has no third product-limit
 * curve.
 */
public final class DatingAnalysis {

  static final double[] YEARS = {1, 3, 5};

  private DatingAnalysis() {}

  /** One row of the result table {@code dating_comparison}. */
  public record Row(
      String grouping,
      String group,
      String dating,
      Double years,
      Double survival,
      Double lower,
      Double upper) {}

  static Row row(GroupKey key, String dating, double years, double survival, Limits limits) {
    return new Row(
        key.grouping().code(),
        key.group(),
        dating,
        years,
        survival,
        Cells.of(limits.lower()),
        Cells.of(limits.upper()));
  }

  /** Adds the product-limit figures under both datings. */
  static void addDated(List<Row> rows, GroupKey key, IntervalCounts counts) {
    CountedLives found = CountedLives.ofOneKind();
    CountedLives middle = CountedLives.ofOneKind();
    for (IntervalCounts.Row life : counts.rows()) {
      if (life.failed()) {
        found.add(life.entryDays(), life.rightDays(), 1, life.count());
        middle.add(life.entryDays(), midpointDays(life), 1, life.count());
      } else {
        found.add(life.entryDays(), life.leftDays(), CountedLives.CENSORED, life.count());
        middle.add(life.entryDays(), life.leftDays(), CountedLives.CENSORED, life.count());
      }
    }
    addFigures(rows, key, "discovery", found);
    addFigures(rows, key, "midpoint", middle);
  }

  /** Rounded down to a half day, as histories do. */
  private static double midpointDays(IntervalCounts.Row life) {
    return life.leftDays() + Math.floor(life.rightDays() - life.leftDays()) / 2;
  }

  private static void addFigures(List<Row> rows, GroupKey key, String dating, CountedLives lives) {
    SurvivalFigures figures = SurvivalFigures.of(SurvivalCurve.of(lives.anyEvent()));
    for (double years : YEARS) {
      OptionalDouble survival = figures.survivalAt(years * Years.DAYS);
      if (survival.isPresent()) {
        rows.add(
            row(key, dating, years, survival.getAsDouble(), figures.limitsAt(years * Years.DAYS)));
      }
    }
  }
}
