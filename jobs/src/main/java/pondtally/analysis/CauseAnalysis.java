package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import pondtally.record.Cause;
import pondtally.stats.Limits;
import pondtally.stats.Wilson;

/** What failures were put down to: counts, shares and Wilson limits by group. */
public final class CauseAnalysis {

  private CauseAnalysis() {}

  /** One row of the result table {@code failure_causes}. */
  public record Row(
      String grouping,
      String group,
      String cause,
      Long failures,
      Double share,
      Double lower,
      Double upper) {}

  /** The rows of the result table. */
  public static List<Row> rows(RateTally tally) {
    List<Row> rows = new ArrayList<>();
    tally.causes().forEach((key, causes) -> addRows(rows, key, causes));
    return rows;
  }

  private static void addRows(List<Row> rows, GroupKey key, SortedMap<Cause, Long> causes) {
    long total = causes.values().stream().mapToLong(Long::longValue).sum();
    causes.forEach(
        (cause, failures) -> {
          Limits limits = Wilson.limits(failures, total, 0.95);
          rows.add(
              new Row(
                  key.grouping().code(),
                  key.group(),
                  cause.code(),
                  failures,
                  (double) failures / total,
                  Cells.of(limits.lower()),
                  Cells.of(limits.upper())));
        });
  }
}
