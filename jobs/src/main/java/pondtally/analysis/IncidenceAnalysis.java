package pondtally.analysis;

import java.util.function.Consumer;
import pondtally.record.Cause;
import pondtally.stats.CountedLives;
import pondtally.stats.CumulativeIncidence;
import pondtally.stats.Limits;

/**
 * Share of lives that will have failed by each cause, and share that will have been retired, by
 * age: what competes is not censored but counted. Only ages at which something of the kind happened
 * have a row.
 */
public final class IncidenceAnalysis {

  /** Said in the place of a cause where a life ended by retirement. */
  public static final String RETIRED = "retired";

  private IncidenceAnalysis() {}

  /** One row of the result table {@code cumulative_incidence}. */
  public record Row(
      String grouping,
      String group,
      String cause,
      Double timeDays,
      Long atRisk,
      Double incidence,
      Double stdError,
      Double lower,
      Double upper) {}

  /** The rows of the result table. */
  public static void rows(LifeTally tally, Consumer<Row> rows) {
    tally
        .lives()
        .forEach(
            (key, lives) -> {
              for (Cause cause : Cause.values()) {
                addRows(rows, key, cause.code(), lives, 1 + cause.ordinal());
              }
              addRows(rows, key, RETIRED, lives, LifeTally.RETIRED);
            });
  }

  private static void addRows(
      Consumer<Row> rows, GroupKey key, String cause, CountedLives lives, int outcome) {
    if (lives.events(outcome) == 0) {
      return;
    }
    CumulativeIncidence incidence = CumulativeIncidence.of(lives, outcome);
    for (int row = 0; row < incidence.rows(); row++) {
      if (incidence.events(row) == 0) {
        continue;
      }
      Limits limits = incidence.limits(row);
      rows.accept(
          new Row(
              key.grouping().code(),
              key.group(),
              cause,
              incidence.time(row),
              incidence.atRisk(row),
              incidence.incidence(row),
              incidence.stdError(row),
              Cells.of(limits.lower()),
              Cells.of(limits.upper())));
    }
  }
}
