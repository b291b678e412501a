package pondtally.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.analysis.GroupKey.Grouping;

/**
 * The result table {@code season_forecast}: failures that visits will find in each of the next five
 * years, visits, hours and dollars, if every device in service now is visited as planned, overdue
 * ones and ones that stand failed at once, and mended or replaced as in the past; no device is
 * added and none retired.
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

  private final AnalysisSettings settings;
  private final SeasonTally tally;
  private final SeasonFits fits;
  private final Map<String, SeasonUnits> units = new HashMap<>();
  private final Map<String, SeasonCourse> courses = new HashMap<>();
  private final SortedMap<GroupKey, SeasonSums> sums = new TreeMap<>();
  private final List<Row> rows = new ArrayList<>();

  private SeasonForecast(SeasonTally tally, AnalysisSettings settings) {
    this.settings = settings;
    this.tally = tally;
    this.fits = SeasonFits.of(tally, settings.seed());
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
    SeasonForecast forecast = of(devices, tally.season(), settings);
    forecast.close();
    return forecast.rows;
  }

  /** Sums of all devices. */
  static SeasonSums all(
      List<WorklistDevice> devices, SeasonTally tally, AnalysisSettings settings) {
    return of(devices, tally, settings).sums.get(GroupKey.ALL);
  }

  private static SeasonForecast of(
      List<WorklistDevice> devices, SeasonTally tally, AnalysisSettings settings) {
    SeasonForecast forecast = new SeasonForecast(tally, settings);
    // Cells come by watershed and pipe type: what has the same of both is added up first, and a
    // watershed's sums are turned into rows, and let go, when the next begins.
    SeasonCell first = null;
    SeasonSums part = null;
    for (Map.Entry<SeasonCell, Long> entry : SeasonCell.count(devices, settings).entrySet()) {
      SeasonCell cell = entry.getKey();
      if (first == null || !cell.isBeside(first)) {
        forecast.end(first, part);
        if (first != null && !first.watershed().equals(cell.watershed())) {
          forecast.close(new GroupKey(Grouping.WATERSHED, first.watershed()));
        }
        first = cell;
        part = new SeasonSums();
      }
      forecast.add(cell, entry.getValue(), part);
    }
    forecast.end(first, part);
    return forecast;
  }

  /** Adds a part to the groups that it is in. */
  private void end(SeasonCell first, SeasonSums part) {
    if (first != null) {
      for (GroupKey key :
          List.of(
              GroupKey.ALL,
              new GroupKey(Grouping.PIPE, first.pipe()),
              new GroupKey(Grouping.WATERSHED, first.watershed()))) {
        sums.computeIfAbsent(key, k -> new SeasonSums()).merge(part);
      }
    }
  }

  private void close() {
    List.copyOf(sums.keySet()).forEach(this::close);
  }

  private void close(GroupKey key) {
    SeasonSums own = sums.remove(key);
    for (int year = 0; year < SeasonSums.YEARS; year++) {
      rows.add(own.row(key, year, settings));
    }
  }

  private void add(SeasonCell cell, long count, SeasonSums into) {
    GroupKey pipe = new GroupKey(Grouping.PIPE, cell.pipe());
    SeasonUnits unit =
        units.computeIfAbsent(cell.pipe(), p -> SeasonUnits.of(tally, pipe, settings.seed()));
    SeasonFit fit = fits.of(pipe).orElse(null);
    into.addDevices(count, cell.failed());
    into.addUnits(fit, unit);
    if (fit == null) {
      addVisits(cell, count, into);
    } else {
      SeasonCourse course =
          courses.computeIfAbsent(
              cell.pipe(),
              p ->
                  new SeasonCourse(
                      fit, unit.replacedShare(), settings.rules().revisitEveryDays(), HORIZON));
      new SeasonEvents(cell, count, course, unit).addTo(into);
    }
  }

  private void addVisits(SeasonCell cell, long count, SeasonSums into) {
    int every = settings.rules().revisitEveryDays();
    for (double day = cell.firstVisit(); day <= HORIZON; day += every) {
      into.addVisit(year(day), count);
    }
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
