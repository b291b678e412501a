package pondtally.analysis;

import java.util.List;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.RiskTable;
import pondtally.stats.SampleSize;

/**
 * What it would take to tell pipe types apart: the first failures that a log-rank test needs to
 * find one pipe failing half as often again as the other (hazard ratio 1.5) four times in five, at
 * 5 per cent (Schoenfeld 1983). The ratio is fixed in advance, not the one observed: a comparison
 * planned on its own result always finds that it needed more (Hoenig and Heisey 2001). What the
 * failures so far could find is given beside it.
 */
public final class SampleSizeAnalysis {

  private static final double HAZARD_RATIO = 1.5;
  private static final double LEVEL = 0.95;
  private static final double POWER = 0.8;

  private SampleSizeAnalysis() {}

  /** One row of the result table {@code sample_size}. */
  public record Row(
      String grouping,
      String groupA,
      String groupB,
      Double hazardRatio,
      Long failuresNeeded,
      Long failuresSoFar,
      Double moreDeviceYears,
      Double smallestRatioSoFar) {}

  /** The rows of the result table: every pair of pipe types with enough devices. */
  public static List<Row> rows(LifeTally tally, int groupsBelow) {
    return Comparisons.pairs(Comparisons.groups(tally, Grouping.PIPE, groupsBelow)).stream()
        .map(pair -> row(pair, tally.failures(pair.a()), tally.failures(pair.b())))
        .toList();
  }

  private static Row row(Comparisons.Pair pair, RiskTable a, RiskTable b) {
    double years = (a.timeAtRisk() + b.timeAtRisk()) / Years.DAYS;
    double share = a.timeAtRisk() / (a.timeAtRisk() + b.timeAtRisk());
    long soFar = a.events() + b.events();
    double needed = Math.ceil(SampleSize.failures(HAZARD_RATIO, share, LEVEL, POWER));
    return new Row(
        pair.a().grouping().code(),
        pair.a().group(),
        pair.b().group(),
        HAZARD_RATIO,
        (long) needed,
        soFar,
        soFar == 0
            ? null
            : (Double) SampleSize.deviceYears(Math.max(0, needed - soFar), 100 * soFar / years),
        soFar == 0 ? null : (Double) SampleSize.smallestRatio(soFar, share, LEVEL, POWER));
  }
}
