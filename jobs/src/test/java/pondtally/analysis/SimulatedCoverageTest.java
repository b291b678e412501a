package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import pondtally.history.FailureDating;

/**
 * A small share of {@link CoverageBenchmark}: what is asked there of 2,000 programs, of few and
 * with the room that few need, 3.29 Monte Carlo errors (one true value in a thousand falls
 * outside).
 */
class SimulatedCoverageTest {

  private static final int PROGRAMS = 400;
  private static final int RESAMPLED_PROGRAMS = 40;

  @Test
  void testsFindADifferenceWhereThereIsNoneAtTheirSize() {
    Map<String, SimulatedCoverage.Share> sizes =
        SimulatedCoverage.rejections(FailureDating.MIDPOINT, PROGRAMS, 150, 20251201);
    double room = 3.29 * 100 * Math.sqrt(0.05 * 0.95 / PROGRAMS);
    int tests = 0;
    for (Map.Entry<String, SimulatedCoverage.Share> size : sizes.entrySet()) {
      // Nine years of installation have too few failures each, which the rows' note says.
      if (!size.getKey().contains("cohort")) {
        assertEquals(PROGRAMS, size.getValue().asked(), size.getKey());
        assertEquals(5, size.getValue().percent(), room, size.getKey());
        tests++;
      }
    }
    assertEquals(9, tests, sizes.keySet().toString());
  }

  @Test
  void limitsCover() {
    Map<String, SimulatedCoverage.Share> shares =
        SimulatedCoverage.coverage(SimulatedSites.SINGLE, RESAMPLED_PROGRAMS, 150, 20251202, true);
    double room = 3.29 * 100 * Math.sqrt(0.05 * 0.95 / RESAMPLED_PROGRAMS);
    int figures = 0;
    for (Map.Entry<String, SimulatedCoverage.Share> share : shares.entrySet()) {
      if (!share.getKey().startsWith("life itself, discovery")) {
        assertTrue(share.getValue().percent() > 95 - room, share.toString());
        figures++;
      }
    }
    assertTrue(figures > 20, shares.keySet().toString());
  }

  /** What the report says of years of installation dated by discovery, shown to be so. */
  @Test
  void datedByDiscoveryYearsOfInstallationSeemToDiffer() {
    SimulatedCoverage.Share trend =
        SimulatedCoverage.rejections(FailureDating.DISCOVERY, PROGRAMS, 300, 20251203)
            .get("trend, cohort");
    assertTrue(trend.percent() > 8, trend.toString());
    assertTrue(
        TestNotes.ofDating(FailureDating.DISCOVERY, GroupKey.Grouping.COHORT)
            .startsWith("failures dated by the visit that found them"));
    assertEquals(null, TestNotes.ofDating(FailureDating.MIDPOINT, GroupKey.Grouping.COHORT));
    assertEquals(null, TestNotes.ofDating(FailureDating.DISCOVERY, GroupKey.Grouping.PIPE));
  }
}
