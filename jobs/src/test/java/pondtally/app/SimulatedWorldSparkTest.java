package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.analysis.SeasonWorld;

/**
 * An invented program whose truth is known, through its files and the whole job: one to four
 * devices a site, unlike sites, partners who visit every 90 and every 360 days, a tenth retired, a
 * tenth followed late. What was counted must be exact; what was estimated must hold the truth
 * within its limits.
 */
class SimulatedWorldSparkTest {

  private static final List<String> PIPES = List.of("single 12 in", "dual 12 in", "smooth 12 in");
  private static final int[] YEARS = {1, 3, 5};
  private static final double DAYS_PER_YEAR = 365.25;

  @TempDir private Path folder;

  /** Limits of a world that held the truth, and how many were asked. */
  private record Held(int held, int asked, boolean nextYear) {}

  private Held run(long seed, int sites) throws IOException {
    SeasonWorld world = SeasonWorld.unlikeSites(seed, sites);
    Path own = folder.resolve("world-" + seed);
    world.write(own);
    JobResult result = SampleRun.of(own);
    countedExactly(world, result);
    int held = 0;
    for (String pipe : PIPES) {
      CSVRecord row =
          SampleRun.rows(result, "survival_summary").stream()
              .filter(r -> r.get("group").equals(pipe) && r.get("method").equals("interval"))
              .findFirst()
              .orElseThrow();
      for (int years : YEARS) {
        double truth = world.survival(pipe, years * DAYS_PER_YEAR);
        held += holds(row, "survival_" + years + "y_lower", "survival_" + years + "y_upper", truth);
      }
    }
    CSVRecord next =
        SampleRun.rows(result, "season_forecast").stream()
            .filter(r -> r.get("group").equals("all") && r.get("year").equals("1"))
            .findFirst()
            .orElseThrow();
    boolean nextYear = holds(next, "lower", "upper", world.foundNextYear()) == 1;
    return new Held(held, PIPES.size() * YEARS.length, nextYear);
  }

  private static int holds(CSVRecord row, String lower, String upper, double truth) {
    return Double.parseDouble(row.get(lower)) <= truth
            && truth <= Double.parseDouble(row.get(upper))
        ? 1
        : 0;
  }

  private static void countedExactly(SeasonWorld world, JobResult result) {
    List<CSVRecord> devices = SampleRun.rows(result, "devices");
    assertEquals(world.devices(), devices.size());
    assertEquals(
        world.retired(), devices.stream().filter(d -> d.get("state").equals("retired")).count());
    assertEquals(
        world.failuresFound(),
        devices.stream().mapToInt(d -> Integer.parseInt(d.get("failures"))).sum());
    for (CSVRecord sheet : SampleRun.rows(result, "row_account")) {
      assertEquals("0", sheet.get("set_aside"), sheet.toString());
      assertEquals("0", sheet.get("duplicate"), sheet.toString());
    }
  }

  /**
   * Nine limits of 95 per cent: fewer than eight hold in 7 of 100 worlds, were they independent.
   */
  @Test
  void aWorldOfUnlikeSitesIsFoundAgain() throws IOException {
    Held held = run(20251231, 400);
    assertTrue(held.held() >= 8, held.toString());
    assertTrue(held.nextYear(), held.toString());
  }

  /** Twenty worlds, 180 limits. */
  @Test
  @Tag("benchmark")
  void soAreTwenty() throws IOException {
    int held = 0;
    int asked = 0;
    int nextYears = 0;
    for (int seed = 1; seed <= 20; seed++) {
      Held one = run(seed, 300);
      held += one.held();
      asked += one.asked();
      nextYears += one.nextYear() ? 1 : 0;
    }
    String what = held + " of " + asked + " limits, next year's in " + nextYears + " of 20";
    System.out.println(what);
    assertTrue(held >= 0.9 * asked, what);
    assertTrue(nextYears >= 17, what);
  }
}
