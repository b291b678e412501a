package pondtally.check;

import java.io.Serializable;

/**
 * The days that dates are judged against.
 *
 * @param asOf data cut, days since 1970-01-01; not after {@code today}
 * @param today day of the run, days since 1970-01-01
 */
public record CheckSettings(int asOf, int today) implements Serializable {}
