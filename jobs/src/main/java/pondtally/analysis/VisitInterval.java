package pondtally.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import pondtally.analysis.GroupKey.Grouping;

/**
 * The result tables {@code visit_interval} and {@code visit_interval_curve}: what one device costs
 * a year in visits and in damage while it lies failed unnoticed, by days between visits. Over the
 * horizon the device fails by its pipe type's fitted intensity, is down until the next visit, and
 * is then mended (its age goes on) or replaced. What mending costs is left out: it hardly depends
 * on the interval. The trade-off of inspection against undetected failure: Barlow, Hunter &amp;
 * Proschan 1963.
 */
public final class VisitInterval {

  private static final int SHORTEST = 14;
  private static final int LONGEST = 730;
  private static final int COARSE = 14;
  private static final int STEP = 10;
  private static final int FIRST_STEP = 30;
  private static final double NEARLY = 1.05;
  private static final int[] SHOWN = {90, 180, 365};

  private final GroupKey key;
  private final SeasonFit fit;
  private final SeasonUnits units;
  private final int horizonYears;
  private final Map<Integer, Double> downShares = new HashMap<>();

  private VisitInterval(GroupKey key, SeasonFit fit, SeasonUnits units, int horizonYears) {
    this.key = key;
    this.fit = fit;
    this.units = units;
    this.horizonYears = horizonYears;
  }

  /** One row of {@code visit_interval}; null: unknown. */
  public record Row(
      String grouping,
      String group,
      Integer bestDays,
      Double costPerYearUsd,
      Double at90,
      Double at180,
      Double at365,
      Integer nearlyFromDays,
      Integer nearlyToDays,
      Double visitUsd,
      Double damagePerYearUsd,
      String fit,
      String borrowed,
      String reason) {}

  /** One point of {@code visit_interval_curve}, dollars a device and year. */
  public record Point(
      String grouping,
      String group,
      Integer days,
      Double visitsUsd,
      Double downtimeUsd,
      Double costPerYearUsd,
      Double downtimeDaysPerYear) {}

  /** Both tables. */
  public record Tables(List<Row> rows, List<Point> points) {}

  /** The rows of both tables: all devices, and each pipe type. */
  public static Tables tables(BenefitTally tally, AnalysisSettings settings) {
    SeasonTally season = tally.season();
    SeasonFits fits = SeasonFits.of(season, settings.seed());
    Tables tables = new Tables(new ArrayList<>(), new ArrayList<>());
    for (GroupKey key : season.groups()) {
      if (key.grouping() == Grouping.ALL || key.grouping() == Grouping.PIPE) {
        SeasonUnits units = SeasonUnits.of(season, key, settings.seed());
        new VisitInterval(key, fits.of(key).orElse(null), units, settings.horizonYears())
            .addTo(tables);
      }
    }
    return tables;
  }

  private void addTo(Tables tables) {
    String missing = missing();
    if (missing != null) {
      tables.rows().add(unknown(missing));
      return;
    }
    int best = bestDays();
    double least = costUsd(best);
    tables.rows().add(row(best, least));
    TreeSet<Integer> days = new TreeSet<>(List.of(SHOWN[0], SHOWN[1], SHOWN[2], best));
    for (int d = FIRST_STEP; d <= LONGEST; d += STEP) {
      days.add(d);
    }
    days.forEach(d -> tables.points().add(point(d)));
  }

  private String missing() {
    if (fit == null) {
      return "fewer than three failures in the whole program: no life could be fitted";
    }
    if (units.visit() == null) {
      return "no visit has a recorded cost";
    }
    return units.damagePerYearUsd() == null ? "no yearly damage is recorded" : null;
  }

  private Row unknown(String reason) {
    return new Row(
        key.grouping().code(),
        key.group(),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        units.visit() == null ? null : (Double) units.visit().meanUsd()[0],
        units.damagePerYearUsd(),
        fit == null ? null : fit.group(),
        units.borrowed(),
        reason);
  }

  private Row row(int best, double least) {
    int from = best;
    while (from > SHORTEST && costUsd(from - 1) <= NEARLY * least) {
      from--;
    }
    int to = best;
    while (to < LONGEST && costUsd(to + 1) <= NEARLY * least) {
      to++;
    }
    return new Row(
        key.grouping().code(),
        key.group(),
        best,
        least,
        costUsd(SHOWN[0]),
        costUsd(SHOWN[1]),
        costUsd(SHOWN[2]),
        from,
        to,
        units.visit().meanUsd()[0],
        units.damagePerYearUsd(),
        fit.group(),
        units.borrowed(),
        best == LONGEST || best == SHORTEST
            ? "the least cost lies at the end of the range looked at, %s to %s days"
                .formatted(SHORTEST, LONGEST)
            : null);
  }

  private int bestDays() {
    int coarse = SHORTEST;
    for (int days = SHORTEST; days <= LONGEST; days += COARSE) {
      coarse = costUsd(days) < costUsd(coarse) ? days : coarse;
    }
    int best = coarse;
    int to = Math.min(LONGEST, coarse + COARSE);
    for (int days = Math.max(SHORTEST, coarse - COARSE); days <= to; days++) {
      best = costUsd(days) < costUsd(best) ? days : best;
    }
    return best;
  }

  private Point point(int days) {
    return new Point(
        key.grouping().code(),
        key.group(),
        days,
        visitsUsd(days),
        costUsd(days) - visitsUsd(days),
        costUsd(days),
        downShare(days) * Years.DAYS);
  }

  private double costUsd(int days) {
    return visitsUsd(days) + downShare(days) * units.damagePerYearUsd();
  }

  private double visitsUsd(int days) {
    return units.visit().meanUsd()[0] * Years.DAYS / days;
  }

  private double downShare(int days) {
    return downShares.computeIfAbsent(
        days, d -> VisitDowntime.share(fit, d, horizonYears * Years.DAYS, units.replacedShare()));
  }
}
