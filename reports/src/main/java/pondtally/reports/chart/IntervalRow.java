package pondtally.reports.chart;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A row of an interval plot.
 *
 * @param name of the group
 * @param cells figures to the right
 * @param value where the mark stands; empty: no mark
 * @param lower end of the interval
 * @param upper end of the interval
 * @param isSmall whether the mark is hollow because few devices stand behind it
 * @param instead words where there is no mark
 */
record IntervalRow(
    String name,
    List<String> cells,
    OptionalDouble value,
    OptionalDouble lower,
    OptionalDouble upper,
    boolean isSmall,
    String instead) {}
