package pondtally.app;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pondtally.analysis.WetlandWorth;
import pondtally.history.FailureDating;
import pondtally.history.FailureDefinition;

/**
 * What {@code program.yaml} says, with defaults where it says nothing.
 *
 * @param region title of the reports
 * @param asOf data cut, days since 1970-01-01; empty: the newest install or visit date in the
 *     records
 * @param periodFrom first day of the reporting period; empty: the first day of the calendar year of
 *     the data cut
 * @param periodTo last day of the reporting period; empty: the last day of the calendar year of the
 *     data cut
 * @param baseYear price year; empty: the last full year of the price index up to the data cut
 * @param wetlandWorth range of the yearly value of an acre; empty: not shown
 * @param volunteerRateUsd empty: volunteer hours are shown, not valued
 */
public record ProgramSettings(
    String region,
    OptionalInt asOf,
    OptionalInt periodFrom,
    OptionalInt periodTo,
    int watershedDigits,
    FailureDefinition failure,
    FailureDating failureDated,
    OptionalInt baseYear,
    double discountRate,
    int horizonYears,
    double laborRateUsd,
    OptionalDouble volunteerRateUsd,
    int revisitEveryDays,
    int groupsBelow,
    long seed,
    int resamples,
    Optional<WetlandWorth> wetlandWorth,
    Optional<String> source) {}
