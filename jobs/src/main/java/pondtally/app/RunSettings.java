package pondtally.app;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.TreeMap;
import pondtally.analysis.AnalysisSettings;
import pondtally.analysis.Prices;
import pondtally.analysis.Scope;
import pondtally.check.CheckSettings;
import pondtally.check.SheetReport;
import pondtally.check.UserError;
import pondtally.history.HistoryRules;
import pondtally.stats.PriceIndex;

/**
 * Settings as a run uses them: what {@code program.yaml} leaves open is taken from the records.
 *
 * @param facts what reports have to know, by name
 */
record RunSettings(
    CheckSettings checks, AnalysisSettings analysis, Prices prices, Map<String, String> facts) {

  static RunSettings of(
      ProgramSettings settings, JobRequest request, List<SheetReport> reports, PriceSource index) {
    int asOf = asOf(settings, request, reports);
    int year = LocalDate.ofEpochDay(asOf).getYear();
    int from =
        first(request.periodFrom(), settings.periodFrom())
            .orElse((int) LocalDate.of(year, 1, 1).toEpochDay());
    int to =
        first(request.periodTo(), settings.periodTo())
            .orElse((int) LocalDate.of(year, 12, 31).toEpochDay());
    if (from > to) {
      throw UserError.usage(
          "The reporting period ends (" + date(to) + ") before it begins (" + date(from) + ").");
    }
    int baseYear = baseYear(settings, index.index(), asOf);
    worthYear(settings, index.index());
    AnalysisSettings analysis =
        new AnalysisSettings(
            new HistoryRules(
                settings.failure(), settings.failureDated(), asOf, settings.revisitEveryDays()),
            from,
            to,
            settings.watershedDigits(),
            baseYear,
            settings.discountRate(),
            settings.horizonYears(),
            settings.laborRateUsd(),
            settings.volunteerRateUsd().isPresent()
                ? (Double) settings.volunteerRateUsd().getAsDouble()
                : null,
            settings.groupsBelow(),
            settings.seed(),
            settings.resamples());
    return new RunSettings(
        new CheckSettings(asOf, request.today()),
        analysis,
        new Prices(index.index(), baseYear),
        facts(settings, analysis, index, request.scope()));
  }

  private static OptionalInt first(OptionalInt a, OptionalInt b) {
    return a.isPresent() ? a : b;
  }

  private static int asOf(ProgramSettings settings, JobRequest request, List<SheetReport> reports) {
    if (settings.asOf().isPresent()) {
      return settings.asOf().getAsInt();
    }
    return reports.stream()
        .map(SheetReport::newestDay)
        .filter(Objects::nonNull)
        .mapToInt(Integer::intValue)
        .max()
        .orElse(request.today());
  }

  private static void worthYear(ProgramSettings settings, PriceIndex index) {
    settings
        .wetlandWorth()
        .filter(worth -> !index.covers(worth.year()))
        .ifPresent(
            worth -> {
              throw UserError.input(
                  "program.yaml: `wetland_value.year` is %s, but the price index holds %s to %s. Give the value in dollars of a year of the index, or add the year to prices.csv."
                      .formatted(worth.year(), index.firstYear(), index.lastYear()));
            });
  }

  private static int baseYear(ProgramSettings settings, PriceIndex index, int asOf) {
    if (settings.baseYear().isPresent()) {
      int year = settings.baseYear().getAsInt();
      if (!index.covers(year)) {
        throw UserError.input(
            "program.yaml: `base_year` is %s, but the price index holds %s to %s. Choose a year of the index, or add the year to prices.csv."
                .formatted(year, index.firstYear(), index.lastYear()));
      }
      return year;
    }
    LocalDate cut = LocalDate.ofEpochDay(asOf);
    int lastFull =
        cut.equals(LocalDate.of(cut.getYear(), 12, 31)) ? cut.getYear() : cut.getYear() - 1;
    return index
        .lastFullYear(lastFull)
        .orElseThrow(
            () ->
                UserError.input(
                    "No year of the price index (%s to %s) is over by the data cut of %s. Set `base_year` in program.yaml."
                        .formatted(index.firstYear(), index.lastYear(), cut)));
  }

  private static Map<String, String> facts(
      ProgramSettings settings, AnalysisSettings analysis, PriceSource index, Scope scope) {
    Map<String, String> facts = new TreeMap<>();
    facts.put("region", settings.region());
    facts.put("as_of", date(analysis.rules().asOf()));
    facts.put("period_from", date(analysis.periodFrom()));
    facts.put("period_to", date(analysis.periodTo()));
    facts.put("period_year", Integer.toString(analysis.fiscalYears().of(analysis.periodTo())));
    facts.put("watershed_digits", Integer.toString(analysis.watershedDigits()));
    facts.put("failure", analysis.rules().failure().code());
    facts.put("failure_dated", analysis.rules().dating().code());
    facts.put("base_year", Integer.toString(analysis.baseYear()));
    facts.put(
        "base_year_provisional",
        Boolean.toString(index.index().isProvisional(analysis.baseYear())));
    facts.put("price_index", index.source());
    facts.put("discount_rate", Double.toString(analysis.discountRate()));
    facts.put("horizon_years", Integer.toString(analysis.horizonYears()));
    facts.put("labor_rate_usd", Double.toString(analysis.laborRateUsd()));
    facts.put(
        "volunteer_rate_usd",
        analysis.volunteerRateUsd() == null ? "" : analysis.volunteerRateUsd().toString());
    facts.put("revisit_every_days", Integer.toString(analysis.rules().revisitEveryDays()));
    facts.put("groups_below", Integer.toString(analysis.groupsBelow()));
    facts.put("seed", Long.toString(analysis.seed()));
    facts.put("resamples", Integer.toString(analysis.resamples()));
    facts.put("version", Version.text());
    if (scope.funder() != null) {
      facts.put("scope_funder", scope.funder());
    }
    if (scope.watershed() != null) {
      facts.put("scope_watershed", scope.watershed());
    }
    return facts;
  }

  private static String date(int day) {
    return LocalDate.ofEpochDay(day).toString();
  }
}
