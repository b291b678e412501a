package pondtally.analysis;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pondtally.stats.CountMixture;

/** Sums of one group over its cells: by year ahead, and by draw of the parameters. */
final class SeasonSums {

  /** Years that are looked ahead. */
  static final int YEARS = 5;

  private static final double TAIL = 0.025;

  private final double[][] failures = new double[YEARS][SeasonFits.DRAWS];
  private final double[][] spread = new double[YEARS][SeasonFits.DRAWS];
  private final double[][] cost = new double[YEARS][SeasonFits.DRAWS];
  private final double[][] costSpread = new double[YEARS][SeasonFits.DRAWS];
  private final double[] visits = new double[YEARS];
  private final double[] hours = new double[YEARS];
  private final double[] repairs = new double[YEARS];
  private final double[] replacements = new double[YEARS];
  private final Set<String> fits = new TreeSet<>();
  private final Set<String> borrowed = new TreeSet<>();
  private long devices;
  private long failed;
  private boolean costKnown = true;
  private boolean hoursKnown = true;
  private boolean fitted = true;

  void addDevices(long count, boolean standFailed) {
    devices += count;
    failed += standFailed ? count : 0;
  }

  void addUnits(SeasonFit fit, SeasonUnits units) {
    fitted &= fit != null;
    if (fit != null) {
      fits.add(fit.group());
    }
    if (units.borrowed() != null) {
      borrowed.addAll(List.of(units.borrowed().split(", ", -1)));
    }
    costKnown &= units.visit() != null;
    hoursKnown &= units.visit() != null && units.visit().hours() != null;
  }

  /** A visit of {@code count} devices in a year (from 0). */
  void addVisit(int year, long count) {
    visits[year] += count;
  }

  /** What a visit finds, in one draw: the chance of a new failure for each of so many devices. */
  void addFound(int year, int draw, long count, double chance) {
    failures[year][draw] += count * chance;
    spread[year][draw] += count * chance * (1 - chance);
  }

  void addCost(int year, int draw, double meanUsd, double varianceUsd) {
    cost[year][draw] += meanUsd;
    costSpread[year][draw] += varianceUsd;
  }

  void addWork(int year, double mended, double replaced, double hoursTaken) {
    repairs[year] += mended;
    replacements[year] += replaced;
    hours[year] += hoursTaken;
  }

  /** Adds the sums of a part of the group. */
  void merge(SeasonSums part) {
    for (int year = 0; year < YEARS; year++) {
      merge(failures[year], part.failures[year]);
      merge(spread[year], part.spread[year]);
      merge(cost[year], part.cost[year]);
      merge(costSpread[year], part.costSpread[year]);
    }
    merge(visits, part.visits);
    merge(hours, part.hours);
    merge(repairs, part.repairs);
    merge(replacements, part.replacements);
    fits.addAll(part.fits);
    borrowed.addAll(part.borrowed);
    devices += part.devices;
    failed += part.failed;
    costKnown &= part.costKnown;
    hoursKnown &= part.hoursKnown;
    fitted &= part.fitted;
  }

  private static void merge(double[] into, double[] more) {
    for (int i = 0; i < into.length; i++) {
      into[i] += more[i];
    }
  }

  /** Failures expected in a year (from 0), at the estimates. */
  double expected(int year) {
    return failures[year][0];
  }

  /** Limits that hold the year's failures with a chance of 1 − 2 × tail. */
  long[] limits(int year, double tail) {
    CountMixture mixture = CountMixture.of(failures[year], spread[year]);
    return new long[] {mixture.countQuantile(tail), mixture.countQuantile(1 - tail)};
  }

  SeasonForecast.Row row(GroupKey key, int year, AnalysisSettings settings) {
    long[] limits = fitted ? limits(year, TAIL) : null;
    boolean known = fitted && costKnown;
    CountMixture dollars = known ? CountMixture.of(cost[year], costSpread[year]) : null;
    boolean timed = fitted && hoursKnown;
    LocalDate cut = LocalDate.ofEpochDay(settings.rules().asOf());
    return new SeasonForecast.Row(
        key.grouping().code(),
        key.group(),
        year + 1,
        (int) cut.plusYears(year).toEpochDay() + 1,
        (int) cut.plusYears(year + 1L).toEpochDay(),
        devices,
        failed,
        fitted ? (Double) failures[year][0] : null,
        limits == null ? null : (Double) (double) limits[0],
        limits == null ? null : (Double) (double) limits[1],
        fitted ? (Double) repairs[year] : null,
        fitted ? (Double) replacements[year] : null,
        visits[year],
        timed ? (Double) hours[year] : null,
        timed ? (Double) (hours[year] / SeasonForecast.HOURS_A_DAY) : null,
        known ? (Double) cost[year][0] : null,
        known ? (Double) Math.max(0, dollars.amountQuantile(TAIL)) : null,
        known ? (Double) dollars.amountQuantile(1 - TAIL) : null,
        fitted ? String.join("; ", fits) : null,
        borrowed.isEmpty() ? null : String.join(", ", borrowed));
  }
}
