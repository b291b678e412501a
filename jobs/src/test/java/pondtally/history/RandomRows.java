package pondtally.history;

import java.util.Random;
import pondtally.record.Action;
import pondtally.record.AreaMethod;
import pondtally.record.Cause;
import pondtally.record.Condition;
import pondtally.record.RetiredReason;

/** Clusters of invented rows, any of which could have passed the checks; the seed decides. */
final class RandomRows {

  private static final int LAST_DAY = 1000;

  private final Random random;
  private final Rows rows = new Rows();

  private RandomRows(long seed) {
    random = new Random(seed);
  }

  static Rows of(long seed) {
    return new RandomRows(seed).cluster();
  }

  private Rows cluster() {
    int sites = 1 + random.nextInt(3);
    for (int s = 0; s < sites; s++) {
      String pond = chance(0.6) ? "pond" : null;
      rows.site("s" + s, pond, chance(0.7) ? acres() : null, chance(0.5) ? acres() : null);
      for (int d = random.nextInt(4); d > 0; d--) {
        device("d" + s + d, "s" + s);
      }
      for (int p = random.nextInt(3); p > 0; p--) {
        Integer from = chance(0.5) ? (Integer) day(0) : null;
        rows.property("p" + p, "s" + s, from, chance(0.3) ? day(from == null ? 0 : from) : null);
      }
      for (int a = random.nextInt(3); a > 0; a--) {
        rows.area("s" + s, null, day(0), acres(), pick(AreaMethod.values()));
      }
    }
    return rows;
  }

  private void device(String deviceId, String siteId) {
    int installedOn = random.nextInt(600);
    Integer trackedFrom = chance(0.3) ? (Integer) day(installedOn) : null;
    Integer retiredOn = chance(0.2) ? (Integer) day(installedOn) : null;
    RetiredReason reason = chance(0.5) ? pick(RetiredReason.values()) : null;
    rows.install(deviceId, siteId, installedOn, trackedFrom, retiredOn, reason);
    for (int v = random.nextInt(9); v > 0; v--) {
      int day = chance(0.1) ? installedOn : day(installedOn);
      visit(deviceId, day);
      if (chance(0.1)) {
        visit(deviceId, day);
      }
      if (chance(0.1)) {
        rows.install(deviceId, siteId, day(day));
      }
    }
  }

  private void visit(String deviceId, int day) {
    Condition condition =
        chance(0.05)
            ? Condition.RETIRED
            : pick(
                new Condition[] {
                  Condition.WORKING,
                  Condition.WORKING,
                  Condition.REDUCED,
                  Condition.FAILED,
                  Condition.FAILED
                });
    Action action =
        chance(0.5)
            ? null
            : chance(0.03)
                ? Action.REMOVED
                : pick(
                    new Action[] {Action.NONE, Action.CLEANED, Action.REPAIRED, Action.REPLACED});
    Cause cause = chance(0.5) ? pick(Cause.values()) : null;
    rows.visit(deviceId, day, condition, action, cause, chance(0.3) ? acres() : null);
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  private int day(int from) {
    return from + random.nextInt(LAST_DAY + 1 - from);
  }

  private double acres() {
    return random.nextInt(400) / 16.0;
  }

  private <T> T pick(T[] choices) {
    return choices[random.nextInt(choices.length)];
  }
}
