package pondtally.history;

import java.io.Serializable;

/**
 * The settings that histories depend on.
 *
 * @param failure which conditions are failure
 * @param dating which day stands for a failure in curves; functional time always uses the midpoint
 * @param asOf data cut, days since 1970-01-01
 * @param revisitEveryDays planned days between visits; beyond twice this a device's state is
 *     unverified
 */
public record HistoryRules(
    FailureDefinition failure, FailureDating dating, int asOf, int revisitEveryDays)
    implements Serializable {}
