package pondtally.analysis;

import java.util.function.Consumer;
import pondtally.stats.Limits;
import pondtally.stats.MeanCumulative;

/**
 * How many failures a device has had on average by its time in service, repeated ones included,
 * with errors that allow for devices that fail again and for neighbors that fail together (Lawless
 * and Nadeau 1995, by cluster of sites).
 */
public final class RepeatAnalysis {

  private static final double LEVEL = 0.95;

  private RepeatAnalysis() {}

  /** One row of the result table {@code repeat_failures}. */
  public record Row(
      String grouping,
      String group,
      Double timeDays,
      Long atRisk,
      Double meanFailures,
      Double stdError,
      Double lower,
      Double upper,
      Long clusters) {}

  /** The rows of the result table: every time at which a device failed. */
  public static void rows(RepeatTally tally, SecondPass second, Consumer<Row> rows) {
    tally
        .means()
        .forEach((key, mean) -> addRows(rows, key, mean, second.repeats(), tally.clusters(key)));
  }

  private static void addRows(
      Consumer<Row> rows, GroupKey key, MeanCumulative mean, RepeatSpreads spreads, long clusters) {
    double[] variances = spreads.variances(key);
    for (int row = 0; row < mean.rows(); row++) {
      double error = Math.sqrt(variances[row]);
      Limits limits = mean.limits(row, error, LEVEL);
      rows.accept(
          new Row(
              key.grouping().code(),
              key.group(),
              mean.time(row),
              mean.atRisk(row),
              mean.mean(row),
              error > 0 ? error : null,
              Cells.of(limits.lower()),
              Cells.of(limits.upper()),
              clusters));
    }
  }
}
