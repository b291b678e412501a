package pondtally.analysis;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pondtally.stats.CountMixture;

/** Sums over devices: by year ahead, and by draw of the parameters. */
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

  void addDevice(boolean standsFailed) {
    devices++;
    failed += standsFailed ? 1 : 0;
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

  /** A visit in a year (from 0). */
  void addVisit(int year) {
    visits[year]++;
  }

  /** What a visit finds, in one draw: a new failure with some chance. */
  void addFound(int year, int draw, double chance) {
    failures[year][draw] += chance;
    spread[year][draw] += chance * (1 - chance);
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

  /** Adds other sums so many times. */
  void add(long count, SeasonSums one) {
    for (int year = 0; year < YEARS; year++) {
      add(count, one.failures[year], failures[year]);
      add(count, one.spread[year], spread[year]);
      add(count, one.cost[year], cost[year]);
      add(count, one.costSpread[year], costSpread[year]);
    }
    add(count, one.visits, visits);
    add(count, one.hours, hours);
    add(count, one.repairs, repairs);
    add(count, one.replacements, replacements);
    fits.addAll(one.fits);
    borrowed.addAll(one.borrowed);
    devices += count * one.devices;
    failed += count * one.failed;
    costKnown &= one.costKnown;
    hoursKnown &= one.hoursKnown;
    fitted &= one.fitted;
  }

  private static void add(double count, double[] one, double[] into) {
    for (int i = 0; i < into.length; i++) {
      into[i] += count * one[i];
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
