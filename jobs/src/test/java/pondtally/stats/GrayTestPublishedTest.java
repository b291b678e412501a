package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.stats.HazardReference.close;
import static pondtally.stats.HazardReference.number;

import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Gray's test on the data of Kyle et al. 2002 against a reference library; sources are in {@code
 * published/hazards/README.md}.
 */
class GrayTestPublishedTest {
  private static GrayCounts counts(String cause, boolean byAge, boolean strata, boolean years) {
    GrayCounts counts = GrayCounts.empty();
    for (Map<String, String> row : HazardReference.rows("mgus2_competing")) {
      double age = number(row, "age");
      String decade = age < 60 ? "under60" : age < 70 ? "60s" : age < 80 ? "70s" : "80up";
      String group = byAge ? decade : row.get("sex");
      String stratum = !strata ? "" : byAge ? row.get("sex") : decade;
      String event = row.get("event");
      GrayCounts.End end =
          event.equals("censor")
              ? GrayCounts.End.CENSORED
              : event.equals(cause) ? GrayCounts.End.EVENT : GrayCounts.End.COMPETING;
      double time = number(row, "time");
      counts.add(stratum, group, years ? Math.ceil(time / 12) : time, end, 1);
    }
    return counts;
  }

  @Test
  void bySex() {
    for (Map<String, String> row : HazardReference.rows("gray_mgus2")) {
      HazardTest test =
          GrayTest.of(counts(row.get("cause"), false, false, false)).test().orElseThrow();
      close(number(row, "gray_stat"), test.statistic(), 1e-9, 0, row.toString());
      close(number(row, "p"), test.pValue(), 1e-8, 0, row.toString());
      assertEquals(number(row, "df"), test.degreesOfFreedom());
    }
  }

  /**
   * Four groups, strata, and ages in whole years for many ties. The reference prints p as 0 where
   * it is below 1e-16.
   */
  @Test
  void moreGroupsStrataAndTies() {
    for (Map<String, String> row : HazardReference.rows("gray_larger")) {
      boolean byAge = row.get("comparison").startsWith("age group");
      boolean years = row.get("comparison").endsWith("years");
      boolean strata = !row.get("strata").isEmpty();
      HazardTest test =
          GrayTest.of(counts(row.get("cause"), byAge, strata, years)).test().orElseThrow();
      close(number(row, "gray_stat"), test.statistic(), 1e-9, 0, row.toString());
      close(number(row, "p"), test.pValue(), 1e-6, 1e-9, row.toString());
      assertEquals(number(row, "df"), test.degreesOfFreedom());
    }
  }
}
