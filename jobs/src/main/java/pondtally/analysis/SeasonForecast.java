package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.analysis.GroupKey.Grouping;

/**
 * The result table {@code season_forecast}: failures that visits will find in each of the next five
 * years, visits, hours and dollars, if every device in service now is visited as planned, overdue
 * ones and ones that stand failed at once, and mended or replaced as in the past; no device is
 * added and none retired. What is expected of one device is worked out once for all of a pipe type
 * that are alike, wherever they stand.
 *
 * <p>Prediction limits take both that parameters and mean costs are estimates (draws around them)
 * and that failures and the cost of each event vary by chance. Draws are seeded; the rest is
 * computed, not simulated. Method: parametric prediction of a nonhomogeneous Poisson process with
 * Weibull intensity, watched at visits (Meeker &amp; Escobar 1998, chapters 12 and 16).
 */
public final class SeasonForecast {

  /** Hours at devices that make a crew's day; travel is not in them. */
  static final double HOURS_A_DAY = 8;

  private static final double HORIZON = SeasonSums.YEARS * Years.DAYS;

  /** So many watersheds at a time have sums in memory. */
  private static final int WATERSHEDS_AT_ONCE = 500;

  private final AnalysisSettings settings;
  private final SeasonTally tally;
  private final SeasonFits fits;
  private final SeasonDevices devices;

  private SeasonForecast(
      List<WorklistDevice> devices, SeasonTally tally, AnalysisSettings settings) {
    this.settings = settings;
    this.tally = tally;
    this.fits = SeasonFits.of(tally, settings.seed());
    this.devices = SeasonDevices.of(devices, settings);
  }

  /** One row of the result table; dates are days since 1970-01-01, null: unknown. */
  public record Row(
      String grouping,
      String group,
      Integer year,
      Integer firstDay,
      Integer lastDay,
      Long devices,
      Long devicesFailed,
      Double expectedFailures,
      Double lower,
      Double upper,
      Double repairs,
      Double replacements,
      Double visits,
      Double hours,
      Double crewDays,
      Double costUsd,
      Double costLower,
      Double costUpper,
      String fit,
      String borrowed) {}

  /** The rows of the result table: all devices, each pipe type and each watershed. */
  public static List<Row> rows(
      List<WorklistDevice> devices, BenefitTally tally, AnalysisSettings settings) {
    return new SeasonForecast(devices, tally.season(), settings).rows();
  }

  /** Sums of all devices. */
  static SeasonSums all(
      List<WorklistDevice> devices, SeasonTally tally, AnalysisSettings settings) {
    SeasonForecast forecast = new SeasonForecast(devices, tally, settings);
    return forecast.sums(forecast.devices.watersheds()).get(GroupKey.ALL);
  }

  private List<Row> rows() {
    SortedMap<GroupKey, SeasonSums> wide = new TreeMap<>();
    List<Row> rows = new ArrayList<>();
    SortedSet<String> left = new TreeSet<>(devices.watersheds());
    while (!left.isEmpty()) {
      SortedSet<String> some = new TreeSet<>();
      while (!left.isEmpty() && some.size() < WATERSHEDS_AT_ONCE) {
        some.add(left.first());
        left.remove(left.first());
      }
      sums(some)
          .forEach(
              (key, own) -> {
                if (key.grouping() == Grouping.WATERSHED) {
                  addRows(key, own, rows);
                } else {
                  wide.computeIfAbsent(key, k -> new SeasonSums()).add(1, own);
                }
              });
    }
    wide.forEach((key, own) -> addRows(key, own, rows));
    return rows;
  }

  private void addRows(GroupKey key, SeasonSums own, List<Row> rows) {
    for (int year = 0; year < SeasonSums.YEARS; year++) {
      rows.add(own.row(key, year, settings));
    }
  }

  /** Sums of each watershed asked for, and of each pipe type and all devices within these. */
  private SortedMap<GroupKey, SeasonSums> sums(SortedSet<String> watersheds) {
    SortedMap<GroupKey, SeasonSums> sums = new TreeMap<>();
    for (String pipe : devices.pipes()) {
      SeasonSums ofPipe = new SeasonSums();
      Expected expected = expected(pipe);
      for (Map.Entry<SeasonCell, SortedMap<String, Long>> cell : devices.cells(pipe).entrySet()) {
        SeasonSums one = null;
        long count = 0;
        for (Map.Entry<String, Long> place : cell.getValue().entrySet()) {
          if (watersheds.contains(place.getKey())) {
            one = one == null ? expected.one(cell.getKey()) : one;
            count += place.getValue();
            sums.computeIfAbsent(
                    new GroupKey(Grouping.WATERSHED, place.getKey()), k -> new SeasonSums())
                .add(place.getValue(), one);
          }
        }
        if (one != null) {
          ofPipe.add(count, one);
        }
      }
      sums.put(new GroupKey(Grouping.PIPE, pipe), ofPipe);
      sums.computeIfAbsent(GroupKey.ALL, k -> new SeasonSums()).add(1, ofPipe);
    }
    return sums;
  }

  /**
   * What is expected of one device of a pipe type; {@code course} is null where nothing is fitted.
   */
  private record Expected(SeasonFit fit, SeasonUnits units, SeasonCourse course, int revisitDays) {

    SeasonSums one(SeasonCell cell) {
      SeasonSums one = new SeasonSums();
      one.addDevice(cell.failed());
      one.addUnits(fit, units);
      if (course == null) {
        for (double day = cell.firstVisit(); day <= HORIZON; day += revisitDays) {
          one.addVisit(year(day));
        }
      } else {
        new SeasonEvents(cell, course, units).addTo(one);
      }
      return one;
    }
  }

  private Expected expected(String pipe) {
    GroupKey key = new GroupKey(Grouping.PIPE, pipe);
    SeasonUnits units = SeasonUnits.of(tally, key, settings.seed());
    SeasonFit fit = fits.of(key).orElse(null);
    int every = settings.rules().revisitEveryDays();
    return new Expected(
        fit,
        units,
        fit == null ? null : new SeasonCourse(fit, units.replacedShare(), every, HORIZON),
        every);
  }

  /** Year (from 0) that a day after the data cut belongs to. */
  static int year(double day) {
    return Math.min(SeasonSums.YEARS, (int) Math.ceil(day / Years.DAYS)) - 1;
  }

  /** Days that are looked ahead. */
  static double horizonDays() {
    return HORIZON;
  }
}
