package pondtally.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import pondtally.app.SampleRun;

/**
 * Whether driving by the worklist finds what has failed unseen. The sample's world knows which
 * devices have failed since their last visit; whoever visits the first fifth of the list should
 * find at least half of them.
 *
 * <p>Found: 7 of the 12 that lie failed unseen, 58 per cent. Over every way in which the hidden
 * time can have gone, by the true chances: 51 per cent of the failures and 63 per cent of their
 * damage behind the devices never visited (49.9 and 58 per cent of the whole list, whose head those
 * are). Ordered by chance of failure alone the first fifth would hold 61 per cent of the failures
 * and 56 of the damage; with the truth known, 64 per cent of the failures would be the most.
 */
class WorklistFindsFailuresSparkTest {

  private static final LocalDate CUT = LocalDate.of(2025, 12, 31);

  private static final Map<String, History> HISTORIES = histories();

  private static final List<CSVRecord> LIST = SampleRun.rows(SampleRun.sample(), "worklist");

  /** By every id that a device is listed under. */
  private static Map<String, History> histories() {
    SampleProgram program = new SampleProgram();
    Map<String, History> histories =
        program.world().histories().stream()
            .collect(Collectors.toMap(h -> h.device().id(), h -> h));
    program.secondIds().forEach((second, id) -> histories.put(second, histories.get(id)));
    return histories;
  }

  private static List<CSVRecord> fifth() {
    return LIST.subList(0, LIST.size() / 5);
  }

  private static boolean hasFailed(CSVRecord row) {
    return !HISTORIES.get(row.get("device_id")).failsOn().isAfter(CUT);
  }

  /** True chance of having failed since last known to work, by the lives that it was drawn from. */
  private static double trueChance(CSVRecord row) {
    History history = HISTORIES.get(row.get("device_id"));
    History.Life life = history.lives().get(history.lives().size() - 1);
    LocalDate good = LocalDate.parse(row.get("last_known_good_on"));
    double hazard =
        hazard(life.pipe(), ChronoUnit.DAYS.between(life.startedOn(), CUT))
            - hazard(life.pipe(), ChronoUnit.DAYS.between(life.startedOn(), good));
    return -Math.expm1(-history.device().hazard() * hazard);
  }

  private static double hazard(SampleTruth.Pipe pipe, long days) {
    return Math.pow(days / pipe.scaleDays, pipe.shape);
  }

  @Test
  void theFirstFifthOfTheListHoldsHalfOfWhatLiesFailedUnseen() {
    assertEquals(263, LIST.size());
    long all = LIST.stream().filter(WorklistFindsFailuresSparkTest::hasFailed).count();
    long first = fifth().stream().filter(WorklistFindsFailuresSparkTest::hasFailed).count();
    assertTrue(all >= 10, "failures to be found: " + all);
    assertTrue(2 * first >= all, first + " of " + all);
  }

  /**
   * The same records, over every way in which the time that nobody saw can have gone. Devices never
   * visited are a list of their own and stand before the order of this one.
   */
  @Test
  void soItDoesOnAverageWithMoreThanThatOfTheDamage() {
    List<CSVRecord> visited =
        LIST.stream().filter(row -> !row.get("block").equals("never-visited")).toList();
    List<CSVRecord> first = visited.subList(0, visited.size() / 5);
    double failures = sum(first, row -> 1) / sum(visited, row -> 1);
    double damage =
        sum(first, WorklistFindsFailuresSparkTest::damageUsd)
            / sum(visited, WorklistFindsFailuresSparkTest::damageUsd);
    assertTrue(failures >= 0.5, "share of failures " + failures);
    assertTrue(damage >= 0.6, "share of damage " + damage);
  }

  private static double sum(List<CSVRecord> rows, ToDoubleFunction<CSVRecord> each) {
    return rows.stream().mapToDouble(row -> trueChance(row) * each.applyAsDouble(row)).sum();
  }

  private static double damageUsd(CSVRecord row) {
    String usd = row.get("damage_per_year_usd");
    return usd.isEmpty() ? 0 : Double.parseDouble(usd);
  }
}
