package pondtally.analysis;

import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.history.FailureDating;
import pondtally.stats.LogRank;

/** What must be known to read a p value. */
final class TestNotes {

  /** The chi-square distribution is rough below this (Cochran 1954). */
  private static final int FEW_EXPECTED = 5;

  private TestNotes() {}

  /**
   * Years of installation end at different ages. Dated by the visit that found them, failures pile
   * up at the last ages of each year, since only devices that will still be visited are at risk
   * there; the test then finds differences where there are none. Null for other groupings and
   * datings.
   */
  static String ofDating(FailureDating dating, Grouping grouping) {
    return dating == FailureDating.DISCOVERY && grouping == Grouping.COHORT
        ? "failures dated by the visit that found them make years of installation seem to differ:"
            + " compare them with failure_dated: interval"
        : null;
  }

  /** Null where enough failures are expected in every group that has lives. */
  static String ofExpected(LogRank test) {
    boolean few =
        IntStream.range(0, test.groups())
            .filter(group -> test.lives(group) > 0)
            .anyMatch(group -> test.expected(group) < FEW_EXPECTED);
    return few && test.pValue().isPresent()
        ? "fewer than " + FEW_EXPECTED + " failures expected in a group: the p value is rough"
        : null;
  }

  /** The notes that there are; null for none. */
  static String joined(String... notes) {
    String all = Arrays.stream(notes).filter(Objects::nonNull).collect(Collectors.joining("; "));
    return all.isEmpty() ? null : all;
  }
}
