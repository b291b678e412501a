package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.stats.Holm;
import pondtally.stats.Limits;
import pondtally.stats.PoissonRate;
import pondtally.stats.RateRatio;

/**
 * Failure rates of each pair of groups over the whole record, with exact limits (Przyborowski and
 * Wilenski 1940) and p values adjusted within the grouping (Holm 1979). All failures count,
 * repeated ones too, as if they came independently of each other.
 */
public final class RateRatioAnalysis {

  private static final List<Grouping> GROUPINGS =
      List.of(Grouping.PIPE, Grouping.KIND, Grouping.WATERSHED, Grouping.BUILD, Grouping.SETTING);

  private RateRatioAnalysis() {}

  /** One row of the result table {@code rate_ratios}. */
  public record Row(
      String grouping,
      String groupA,
      String groupB,
      Long failuresA,
      Double deviceYearsA,
      Long failuresB,
      Double deviceYearsB,
      Double rateRatio,
      Double lower,
      Double upper,
      Double pValue,
      Double pAdjusted) {}

  /** The rows of the result table. */
  public static List<Row> rows(RateTally tally, int groupsBelow) {
    List<Row> rows = new ArrayList<>();
    for (Grouping grouping : GROUPINGS) {
      List<GroupKey> groups =
          Comparisons.groups(
              tally.counts().keySet(), grouping, key -> whole(tally, key).devices(), groupsBelow);
      List<Comparisons.Pair> pairs = Comparisons.pairs(groups);
      List<RateRatio> ratios =
          pairs.stream()
              .map(pair -> RateRatio.of(rate(tally, pair.a()), rate(tally, pair.b())))
              .toList();
      List<OptionalDouble> adjusted = Holm.adjust(ratios.stream().map(RateRatio::pValue).toList());
      for (int i = 0; i < pairs.size(); i++) {
        rows.add(row(tally, pairs.get(i), ratios.get(i), adjusted.get(i)));
      }
    }
    return rows;
  }

  private static RateTally.Counts whole(RateTally tally, GroupKey key) {
    return tally.whole(key);
  }

  private static PoissonRate rate(RateTally tally, GroupKey key) {
    RateTally.Counts counts = whole(tally, key);
    return PoissonRate.of(counts.failures(), counts.deviceYears());
  }

  private static Row row(
      RateTally tally, Comparisons.Pair pair, RateRatio ratio, OptionalDouble adjusted) {
    RateTally.Counts a = whole(tally, pair.a());
    RateTally.Counts b = whole(tally, pair.b());
    Limits limits = ratio.limits();
    return new Row(
        pair.a().grouping().code(),
        pair.a().group(),
        pair.b().group(),
        a.failures(),
        a.deviceYears(),
        b.failures(),
        b.deviceYears(),
        Cells.of(ratio.ratio()),
        Cells.of(limits.lower()),
        Cells.of(limits.upper()),
        Cells.of(ratio.pValue()),
        Cells.of(adjusted));
  }
}
