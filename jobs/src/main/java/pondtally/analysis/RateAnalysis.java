package pondtally.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.CountedLives;
import pondtally.stats.Limits;
import pondtally.stats.PoissonRate;
import pondtally.stats.RiskTable;

/**
 * Failures in a hundred device-years with exact limits, and for watersheds what the pipes and ages
 * there would lead one to expect, so that a small watershed is not called worse than it is.
 */
public final class RateAnalysis {

  private RateAnalysis() {}

  /** One row of the result table {@code failure_rates}. */
  public record Row(
      String grouping,
      String group,
      String year,
      Long devices,
      Long failures,
      Double deviceYears,
      Double per100DeviceYears,
      Double lower,
      Double upper,
      Double expected,
      Double shrunken,
      Double funnelLower,
      Double funnelUpper,
      Double funnelLower95,
      Double funnelUpper95,
      Boolean outsideFunnel,
      String withheldReason) {}

  /** The rows of the result table. */
  public static List<Row> rows(RateTally tally, AnalysisSettings settings) {
    List<Row> rows = new ArrayList<>();
    Map<String, WatershedComparison> watersheds = WatershedComparison.of(tally);
    tally
        .counts()
        .forEach(
            (key, byYear) ->
                byYear.forEach(
                    (year, counts) ->
                        rows.add(
                            row(key, year, counts, comparison(key, year, watersheds), settings))));
    return rows;
  }

  private static WatershedComparison comparison(
      GroupKey key, int year, Map<String, WatershedComparison> watersheds) {
    return key.grouping() == Grouping.WATERSHED && year == Years.WHOLE
        ? watersheds.get(key.group())
        : null;
  }

  private static Row row(
      GroupKey key,
      int year,
      RateTally.Counts counts,
      WatershedComparison watershed,
      AnalysisSettings settings) {
    double years = counts.deviceYears();
    boolean exposed = years > 0;
    PoissonRate rate = exposed ? PoissonRate.of(counts.failures(), years) : null;
    Limits limits = exposed ? rate.limitsPer100DeviceYears() : Limits.none();
    boolean small = counts.devices() < settings.groupsBelow();
    return new Row(
        key.grouping().code(),
        key.group(),
        Years.label(year),
        counts.devices(),
        counts.failures(),
        years,
        exposed ? Cells.of(rate.per100DeviceYears()) : null,
        Cells.of(limits.lower()),
        Cells.of(limits.upper()),
        watershed == null ? null : watershed.expected(),
        watershed == null ? null : watershed.shrunken(),
        watershed == null ? null : watershed.funnelLower(),
        watershed == null ? null : watershed.funnelUpper(),
        watershed == null ? null : watershed.innerLower(),
        watershed == null ? null : watershed.innerUpper(),
        watershed == null ? null : watershed.outside(),
        small ? "fewer than " + settings.groupsBelow() + " devices: shown, not ranked" : null);
  }

  /** Failures expected in each watershed from the pooled hazard by pipe type and age. */
  static SortedMap<String, Double> expected(
      SortedMap<String, SortedMap<String, CountedLives>> agesByWatershedAndPipe) {
    Map<String, CountedLives> pooled = new HashMap<>();
    agesByWatershedAndPipe
        .values()
        .forEach(
            byPipe ->
                byPipe.forEach(
                    (pipe, ages) ->
                        pooled.computeIfAbsent(pipe, p -> CountedLives.ofOneKind()).merge(ages)));
    Map<String, RiskTable> hazards = new HashMap<>();
    pooled.forEach((pipe, ages) -> hazards.put(pipe, ages.anyEvent()));
    SortedMap<String, Double> expected = new TreeMap<>();
    agesByWatershedAndPipe.forEach(
        (watershed, byPipe) -> {
          double sum = 0;
          for (Map.Entry<String, CountedLives> entry : byPipe.entrySet()) {
            sum += expected(hazards.get(entry.getKey()), entry.getValue().anyEvent());
          }
          expected.put(watershed, sum);
        });
    return expected;
  }

  private static double expected(RiskTable pooled, RiskTable own) {
    double sum = 0;
    for (int row = 0; row < pooled.rows(); row++) {
      if (pooled.events(row) > 0) {
        double hazard = (double) pooled.events(row) / pooled.atRisk(row);
        sum += hazard * own.atRiskAt(pooled.time(row));
      }
    }
    return sum;
  }
}
