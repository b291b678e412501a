package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Condition;

/**
 * Published data sets entered as if they were devices and visits: the histories' lives must give
 * the numbers at risk and of events that general-purpose software (R 4.2.2, survival 3.5-3) gives
 * at every time. One unit of the data's time is a day here.
 */
class HistoriesPublishedTest {

  private static final HistoryRules RULES =
      new HistoryRules(FailureDefinition.FAILED, FailureDating.DISCOVERY, 2000, 180);

  private static List<Map<String, String>> table(String name) {
    try (InputStream in =
        HistoriesPublishedTest.class.getResourceAsStream("/published/curves/" + name + ".csv")) {
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      List<String> heads = List.of(lines.get(0).split(",", -1));
      List<Map<String, String>> rows = new ArrayList<>();
      for (String line : lines.subList(1, lines.size())) {
        Map<String, String> row = new LinkedHashMap<>();
        String[] cells = line.split(",", -1);
        for (int i = 0; i < cells.length; i++) {
          row.put(heads.get(i), cells[i]);
        }
        rows.add(row);
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static int number(Map<String, String> row, String column) {
    return Integer.parseInt(row.get(column));
  }

  private static List<DeviceHistory> devices(Rows rows) {
    return rows.history(RULES).sites().get(0).devices();
  }

  private static <T> long count(List<T> all, Predicate<T> which) {
    return all.stream().filter(which).count();
  }

  /**
   * Delayed entry: Hyde 1977, Biometrika 64:225-230, residents of a retirement home by age in
   * months (KMsurv, channing). Four residents who left at the age they came are dropped there and
   * here.
   */
  @Test
  void hydeRetirementHome() {
    for (String[] group : new String[][] {{"1", "group=male"}, {"2", "group=female"}}) {
      Rows rows = new Rows().site("s1");
      for (Map<String, String> resident : table("channing")) {
        if (resident.get("gender").equals(group[0])
            && number(resident, "ageentry") < number(resident, "age")) {
          String id = resident.get("obs");
          rows.install(id, "s1", 0, number(resident, "ageentry"), null, null);
          boolean died = number(resident, "death") == 1;
          rows.visit(id, number(resident, "age"), died ? Condition.FAILED : Condition.WORKING);
        }
      }
      List<Life> lives = devices(rows).stream().map(d -> d.lives().get(0)).toList();
      int checked = 0;
      for (Map<String, String> row : table("lefttrunc_channing")) {
        if (row.get("group").equals(group[1])) {
          int age = 2 * number(row, "time");
          Predicate<Life> leaves = life -> life.exitAge(FailureDating.DISCOVERY) == age;
          Predicate<Life> atRisk =
              life -> life.entryAge() < age && age <= life.exitAge(FailureDating.DISCOVERY);
          assertEquals(number(row, "n_risk"), count(lives, atRisk), row.toString());
          assertEquals(number(row, "n_event"), count(lives, leaves.and(Life::failed)));
          assertEquals(number(row, "n_censor"), count(lives, leaves.and(l -> !l.failed())));
          checked++;
        }
      }
      assertTrue(checked > 80, group[1]);
    }
  }

  /**
   * Repeated failures: Nelson 1995, Technometrics 37:147-157, replacements of valve seats in 41
   * diesel engines (survival, valveSeat). Engines 328 and 402 had two replacements on one day (653
   * and 139), which one visit a day finds as one failure: 46 of the 48.
   */
  @Test
  void nelsonValveSeats() {
    Rows rows = new Rows().site("s1");
    for (Map<String, String> row : table("valve_seat")) {
      if (rows.installs.stream().noneMatch(i -> i.deviceId().equals(row.get("id")))) {
        rows.install(row.get("id"), "s1", 0);
      }
      boolean failed = number(row, "status") == 1;
      rows.visit(
          row.get("id"),
          number(row, "time"),
          failed ? Condition.FAILED : Condition.WORKING,
          failed ? Action.REPAIRED : Action.NONE);
    }
    List<DeviceHistory> engines = devices(rows);
    List<Failure> failures = engines.stream().flatMap(d -> d.failures().stream()).toList();
    assertEquals(41, engines.size());
    assertEquals(46, failures.size());
    for (Map<String, String> row : table("mcf_valve_seat")) {
      int day = number(row, "time");
      int published = number(row, "n_events") - (day == 653 || day == 139 ? 1 : 0);
      assertEquals(published, count(failures, f -> f.foundOn() == 2 * day), row.toString());
      assertEquals(number(row, "n_risk"), count(engines, d -> d.lastVisitOn() >= 2 * day));
    }
  }
}
