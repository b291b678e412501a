package pondtally.check;

import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.Visit;

class VisitRulesTest {

  private static Visit visit(int row, String on, Condition condition, Object... more) {
    Object[] fields = new Object[6 + more.length];
    System.arraycopy(
        new Object[] {"deviceId", "D1", "visitedOn", on, "condition", condition}, 0, fields, 0, 6);
    System.arraycopy(more, 0, fields, 6, more.length);
    return TestRow.of(Visit.class, row, fields);
  }

  private static Install reinstall(int row, String on) {
    return TestRow.of(Install.class, row, "deviceId", "D1", "siteId", "S1", "installedOn", on);
  }

  @Test
  void visitToUnknownDevice() {
    Visit row =
        TestRow.of(
            Visit.class,
            7,
            "deviceId",
            "D-1",
            "visitedOn",
            "2021-04-02",
            "condition",
            Condition.WORKING);
    TestCluster.of(row)
        .finds(
            "revisits 7 device_id=D-1 set-aside unknown-device: The visit has no"
                + " device: no"
                + " install row that counts has the id \"D-1\". The row was set"
                + " aside. Correct"
                + " the id, or add the install (or correct its row, if that was set aside).")
        .judges("7 SET_ASIDE");
  }

  @Test
  void visitBeforeInstall() {
    TestCluster.sound(visit(8, "2019-11-01", Condition.WORKING))
        .finds(
            "revisits 8 visited_on=2019-11-01 set-aside visit-before-install: The visit on"
                + " 2019-11-01 is before the install of device \"D1\" on 2020-05-01"
                + " ({row:2/0/3})."
                + " The row was set aside. Correct whichever date is wrong.")
        .judges("8 SET_ASIDE");
  }

  @Test
  void visitOnTheInstallDayCounts() {
    TestCluster.sound(visit(8, "2020-05-01", Condition.WORKING)).finds().judges();
  }

  @Test
  void visitAfterTheCut() {
    TestCluster.sound(visit(8, "2026-02-01", Condition.WORKING))
        .finds(
            "revisits 8 visited_on=2026-02-01 set-aside date-after-cut: 2026-02-01"
                + " is after the"
                + " data cut of 2025-12-31, so the row is not counted and was set aside."
                + " If the date"
                + " is wrong, correct it; if it is right, set as_of in program.yaml to"
                + " 2026-02-01 or"
                + " later to count the row.")
        .judges("8 SET_ASIDE");
  }

  @Test
  void visitInTheFuture() {
    TestCluster.sound(visit(8, "2052-02-01", Condition.WORKING))
        .finds(
            "revisits 8 visited_on=2052-02-01 set-aside date-after-cut: 2052-02-01"
                + " is in the"
                + " future (this check was run on 2026-03-10). The row was set aside."
                + " Correct the"
                + " date.")
        .judges("8 SET_ASIDE");
  }

  @Test
  void worseOfTwoVisitsOnADayCounts() {
    TestCluster.sound(
            visit(8, "2021-05-01", Condition.WORKING),
            visit(9, "2021-05-01", Condition.FAILED),
            visit(10, "2021-05-01", Condition.REDUCED))
        .finds(
            "revisits 8 condition=working notice same-day-visits: Two rows about"
                + " device \"D1\""
                + " on 2021-05-01 disagree: failed there ({row:0/0/9}), working here. The worse"
                + " condition counts, so that row is used and this one is not. Correct the row that"
                + " is wrong, or delete it.",
            "revisits 10 condition=reduced notice same-day-visits: Two rows about"
                + " device \"D1\""
                + " on 2021-05-01 disagree: failed there ({row:0/0/9}), reduced here. The worse"
                + " condition counts, so that row is used and this one is not. Correct the row that"
                + " is wrong, or delete it.")
        .judges("8 DUPLICATE", "10 DUPLICATE");
  }

  @Test
  void whatGoesUncountedWithTheMilderVisitIsSaid() {
    TestCluster.sound(
            visit(8, "2021-05-01", Condition.FAILED, "hours", 2.0),
            visit(
                9,
                "2021-05-01",
                Condition.WORKING,
                "action",
                Action.CLEANED,
                "hours",
                2.0,
                "costUsd",
                12.5))
        .finds(
            "revisits 9 condition=working notice same-day-visits: Two rows about"
                + " device \"D1\""
                + " on 2021-05-01 disagree: failed there ({row:0/0/8}), working here. The worse"
                + " condition counts, so that row is used and this one is not. Correct the row that"
                + " is wrong, or delete it. Not counted with it:"
                + " action cleaned and cost_usd 12.5. If that belongs to the day, write"
                + " it in the row"
                + " that is used.")
        .judges("9 DUPLICATE");
  }

  @Test
  void fullerOfTwoEquallyBadVisitsCounts() {
    TestCluster.sound(
            visit(8, "2021-05-01", Condition.FAILED),
            visit(9, "2021-05-01", Condition.FAILED, "action", Action.REPAIRED))
        .finds(
            "revisits 8 condition=failed notice same-day-visits: Another row about device"
                + " \"D1\" on 2021-05-01 ({row:0/0/9}) differs in action (repaired"
                + " there, nothing"
                + " here). One row a day is counted, the one with more filled in, so"
                + " that row is used"
                + " and this one is not.")
        .judges("8 DUPLICATE");
  }

  @Test
  void retirementIsKeptBesideTheWorst() {
    TestCluster.sound(
            visit(8, "2021-05-01", Condition.RETIRED), visit(9, "2021-05-01", Condition.FAILED))
        .finds()
        .judges();
  }

  @Test
  void visitAfterRetirement() {
    TestCluster.sound(
            visit(8, "2022-05-01", Condition.RETIRED), visit(9, "2022-05-02", Condition.WORKING))
        .finds(
            "revisits 9 visited_on=2022-05-02 set-aside visit-after-end: The visit on"
                + " 2022-05-02 is after device \"D1\" was retired on 2022-05-01"
                + " ({row:0/0/8}). The"
                + " row was set aside. If the device was put in again, add an install row dated"
                + " 2022-05-01 or later; if a date is wrong, correct it.")
        .judges("9 SET_ASIDE");
  }

  @Test
  void visitAfterRemoval() {
    TestCluster.sound(
            visit(8, "2022-05-01", Condition.FAILED, "action", Action.REMOVED),
            visit(9, "2023-05-02", Condition.RETIRED))
        .finds(
            "revisits 9 visited_on=2023-05-02 set-aside visit-after-end: The visit on"
                + " 2023-05-02 is after device \"D1\" was removed on 2022-05-01"
                + " ({row:0/0/8}). The"
                + " row was set aside. If the device was put in again, add an install row dated"
                + " 2022-05-01 or later; if a date is wrong, correct it.")
        .judges("9 SET_ASIDE");
  }

  @Test
  void visitAfterTheInstallRowsOwnRetirement() {
    Install retired =
        TestRow.of(
            Install.class,
            5,
            "deviceId",
            "D2",
            "siteId",
            "S1",
            "installedOn",
            "2021-01-01",
            "retiredOn",
            "2021-06-01",
            "laborHours",
            1.0);
    Visit same =
        TestRow.of(
            Visit.class,
            8,
            "deviceId",
            "D2",
            "visitedOn",
            "2021-06-01",
            "condition",
            Condition.FAILED);
    Visit later =
        TestRow.of(
            Visit.class,
            9,
            "deviceId",
            "D2",
            "visitedOn",
            "2021-06-02",
            "condition",
            Condition.FAILED);
    TestCluster.sound(retired, same, later)
        .finds(
            "revisits 9 visited_on=2021-06-02 set-aside visit-after-end: The visit on"
                + " 2021-06-02 is after device \"D2\" was retired on 2021-06-01"
                + " ({row:0/0/5}). The"
                + " row was set aside. If the device was put in again, add an install row dated"
                + " 2021-06-01 or later; if a date is wrong, correct it.")
        .judges("9 SET_ASIDE");
  }

  @Test
  void installAfterRetirementOpensAgain() {
    TestCluster.sound(
            visit(8, "2022-05-01", Condition.RETIRED),
            reinstall(10, "2023-05-01"),
            visit(11, "2023-09-01", Condition.RETIRED),
            visit(12, "2024-01-01", Condition.WORKING))
        .finds(
            "revisits 12 visited_on=2024-01-01 set-aside visit-after-end: The visit on"
                + " 2024-01-01 is after device \"D1\" was retired on 2023-09-01"
                + " ({row:0/0/11}). The"
                + " row was set aside. If the device was put in again, add an install row dated"
                + " 2023-09-01 or later; if a date is wrong, correct it.")
        .judges("12 SET_ASIDE");
  }

  @Test
  void visitBetweenRetirementAndNextInstallIsSetAside() {
    TestCluster.sound(
            visit(8, "2022-05-01", Condition.RETIRED),
            visit(9, "2022-08-01", Condition.WORKING),
            reinstall(10, "2023-05-01"))
        .judges("9 SET_ASIDE");
  }

  @Test
  void installOnTheDayOfRetirementOpensAgain() {
    TestCluster.sound(
            visit(8, "2022-05-01", Condition.RETIRED),
            reinstall(10, "2022-05-01"),
            visit(11, "2023-09-01", Condition.WORKING))
        .finds()
        .judges();
  }

  @Test
  void failureOnTheInstallDayIsNoticed() {
    TestCluster.sound(visit(8, "2020-05-01", Condition.FAILED))
        .finds(
            "revisits 8 visited_on=2020-05-01 notice failed-on-entry-day: Device"
                + " \"D1\" was"
                + " found failed on 2020-05-01, the first day it was followed. The"
                + " failure counts as"
                + " one on that day. Check both dates.")
        .judges();
  }

  @Test
  void failureOnTheFirstDayFollowedIsNoticed() {
    Install followedLater =
        TestRow.of(
            Install.class,
            5,
            "deviceId",
            "D2",
            "siteId",
            "S1",
            "installedOn",
            "2021-01-01",
            "trackedFrom",
            "2021-06-01",
            "laborHours",
            1.0);
    Visit failed =
        TestRow.of(
            Visit.class,
            9,
            "deviceId",
            "D2",
            "visitedOn",
            "2021-06-01",
            "condition",
            Condition.FAILED);
    TestCluster.sound(followedLater, failed)
        .finds(
            "revisits 9 visited_on=2021-06-01 notice failed-on-entry-day: Device"
                + " \"D2\" was"
                + " found failed on 2021-06-01, the first day it was followed. The"
                + " failure counts as"
                + " one on that day. Check both dates.")
        .judges();
  }
}
