package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;
import pondtally.record.Site;
import pondtally.record.Visit;

class InstallRulesTest {

  private static Install install(int row, String device, String on, Object... more) {
    Object[] fields = new Object[8 + more.length];
    System.arraycopy(
        new Object[] {"deviceId", device, "siteId", "S1", "installedOn", on, "volunteerHours", 2.0},
        0,
        fields,
        0,
        8);
    System.arraycopy(more, 0, fields, 8, more.length);
    return TestRow.at(Install.class, new Origin(4, 0, row, false), fields);
  }

  private static Visit visit(int row, String device, String on, Object... more) {
    Object[] fields = new Object[6 + more.length];
    System.arraycopy(
        new Object[] {"deviceId", device, "visitedOn", on, "condition", Condition.WORKING},
        0,
        fields,
        0,
        6);
    System.arraycopy(more, 0, fields, 6, more.length);
    return TestRow.at(Visit.class, new Origin(5, 0, row, false), fields);
  }

  @Test
  void deviceWithoutSiteTakesItsRowsWithIt() {
    Install install =
        TestRow.of(
            Install.class, 5, "deviceId", "D9", "siteId", "S-1", "installedOn", "2021-01-01");
    MaterialLine line =
        TestRow.of(MaterialLine.class, 6, "deviceId", "D9", "quantity", 1.0, "totalCostUsd", 9.0);
    TestCluster.of(install, line, visit(7, "D9", "2021-07-01"))
        .finds(
            "installs 5 site_id=S-1 set-aside unknown-site: The device has no"
                + " site: no sites row that counts has the id \"S-1\". The row was set aside."
                + " Correct the"
                + " id, or add the site (or correct its row, if that was set aside).",
            "materials 6 device_id=D9 set-aside device-set-aside: The install of"
                + " device \"D9\""
                + " ({row:0/0/5}) was set aside, so this cost line has no device and was"
                + " set aside"
                + " too. Correct the install row; this one may be right.",
            "revisits 7 device_id=D9 set-aside device-set-aside: The install of"
                + " device \"D9\""
                + " ({row:0/0/5}) was set aside, so this visit has no device and was set"
                + " aside too."
                + " Correct the install row; this one may be right.")
        .judges("5 SET_ASIDE", "6 SET_ASIDE", "7 SET_ASIDE");
  }

  @Test
  void laterOfTwoDifferingInstallsIsSetAside() {
    TestCluster.sound(install(9, "D1", "2020-05-11"))
        .finds(
            "installs 9 device_id=D1 set-aside install-differs: Another install"
                + " row of device"
                + " \"D1\" ({row:2/0/3}) differs in installed_on (2020-05-01 there,"
                + " 2020-05-11 here),"
                + " labor_hours (8 there, nothing here) and volunteer_hours (nothing"
                + " there, 2 here)."
                + " That row comes first and is used; this one was set aside. If the device was"
                + " rebuilt, record the visit that replaced or retired it; if these are"
                + " two devices,"
                + " give each an id of its own; if not, delete the wrong row.")
        .judges("9 SET_ASIDE");
  }

  @Test
  void firstInFileOrderIsUsedEvenWhereItIsTheLaterDate() {
    TestCluster.sound(install(9, "D1", "2019-05-11")).judges("9 SET_ASIDE");
  }

  @Test
  void installOnTheDayOfReplacementIsTheNextLife() {
    TestCluster.sound(
            visit(8, "D1", "2022-05-01", "action", Action.REPLACED), install(9, "D1", "2022-05-01"))
        .finds()
        .judges();
  }

  @Test
  void secondInstallWithinTheNextLifeIsSetAside() {
    TestCluster.sound(
            visit(8, "D1", "2022-05-01", "action", Action.REPLACED),
            install(9, "D1", "2022-05-01"),
            install(10, "D1", "2022-05-03"))
        .finds(
            "installs 10 device_id=D1 set-aside install-differs: Another install"
                + " row of device"
                + " \"D1\" ({row:4/0/9}) differs in installed_on (2022-05-01 there,"
                + " 2022-05-03 here)."
                + " That row comes first and is used; this one was set aside. If the device was"
                + " rebuilt, record the visit that replaced or retired it; if these are"
                + " two devices,"
                + " give each an id of its own; if not, delete the wrong row.")
        .judges("10 SET_ASIDE");
  }

  @Test
  void installBeforeTheReplacementIsStillAConflict() {
    TestCluster.sound(
            visit(8, "D1", "2022-05-01", "action", Action.REPLACED), install(9, "D1", "2022-04-30"))
        .judges("9 SET_ASIDE");
  }

  @Test
  void installAfterTheRetirementInTheFirstRowIsTheNextLife() {
    TestCluster.sound(
            install(8, "D2", "2020-05-03", "retiredOn", "2021-01-01"),
            visit(9, "D2", "2020-08-01"),
            install(10, "D2", "2022-05-01"),
            visit(11, "D2", "2022-08-01"))
        .finds()
        .judges();
  }

  @Test
  void anEndInARowThatWasSetAsideOpensNothing() {
    TestCluster.sound(
            install(8, "D1", "2020-05-03", "retiredOn", "2021-01-01"),
            install(9, "D1", "2022-05-01"))
        .judges("8 SET_ASIDE", "9 SET_ASIDE");
  }

  @Test
  void aReplacementAfterTheEndOpensNothing() {
    TestCluster.sound(
            visit(7, "D1", "2021-05-01", "action", Action.REMOVED),
            install(9, "D1", "2022-05-01"),
            visit(10, "D1", "2022-08-01", "action", Action.REMOVED),
            visit(11, "D1", "2022-09-01", "action", Action.REPLACED),
            install(12, "D1", "2022-10-01"))
        .judges("11 SET_ASIDE");
  }

  @Test
  void earlierLifeMayStandInALaterFile() {
    TestCluster.sound(
            visit(7, "D1", "2019-05-01", "action", Action.REPLACED), install(9, "D1", "2018-04-30"))
        .finds()
        .judges();
  }

  @Test
  void deviceAtAnotherSiteIsAnotherDevice() {
    Install moved =
        TestRow.of(Install.class, 9, "deviceId", "D1", "siteId", "S2", "installedOn", "2023-01-01");
    TestCluster.sound(
            TestRow.of(Site.class, 5, "siteId", "S2", "watershed", "99010203", "pondId", "S1"),
            visit(8, "D1", "2022-05-01", "action", Action.REMOVED),
            moved)
        .finds(
            "installs 9 device_id=D1 set-aside device-at-two-sites: Device \"D1\""
                + " was first"
                + " installed at site \"S1\" ({row:2/0/3}), here it is at site \"S2\". A"
                + " device put"
                + " in at another site is a new device: give it an id of its own, in its"
                + " visits and"
                + " cost lines too. The row was set aside.")
        .judges("9 SET_ASIDE");
  }

  @Test
  void installInTheFuture() {
    TestCluster.sound(install(9, "D2", "2027-05-11"))
        .finds(
            "installs 9 installed_on=2027-05-11 set-aside date-after-cut:"
                + " 2027-05-11 is in the"
                + " future (this check was run on 2026-03-10). The row was set aside."
                + " Correct the"
                + " date.")
        .judges("9 SET_ASIDE");
  }

  @Test
  void retiredBeforeInstallIsDropped() {
    TestCluster cluster =
        TestCluster.sound(
            install(9, "D2", "2021-05-11", "retiredOn", "2020-05-11"),
            visit(10, "D2", "2021-08-01"));
    cluster
        .finds(
            "installs 9 retired_on=2020-05-11 changed retired-before-install:"
                + " 2020-05-11 is"
                + " before the install on 2021-05-11. The date was dropped: the device"
                + " counts as not"
                + " retired by this row. Correct whichever date is wrong.")
        .judges("9 CHANGED");
    assertNull(cluster.checked().kept().installs().get(1).retiredOn());
  }

  @Test
  void retiredAfterTheCutIsNotYet() {
    TestCluster.sound(
            install(9, "D2", "2021-05-11", "retiredOn", "2026-01-15"),
            install(11, "D3", "2021-05-11", "retiredOn", "2026-05-15"),
            visit(10, "D2", "2021-08-01"),
            visit(12, "D3", "2021-08-01"))
        .finds(
            "installs 9 retired_on=2026-01-15 changed retired-after-cut:"
                + " 2026-01-15 is after"
                + " the data cut of 2025-12-31. The date was dropped: at the cut the"
                + " device was not"
                + " yet retired. If the date is right, nothing needs correcting.",
            "installs 11 retired_on=2026-05-15 changed retired-after-cut:"
                + " 2026-05-15 is in the"
                + " future (this check was run on 2026-03-10). The date was dropped: the device"
                + " counts as not yet retired. Correct the date if it is wrong.")
        .judges("9 CHANGED", "11 CHANGED");
  }

  @Test
  void trackedBeforeInstallIsNoticed() {
    TestCluster.sound(
            install(9, "D2", "2021-05-11", "trackedFrom", "2021-05-01"),
            visit(10, "D2", "2021-08-01"))
        .finds(
            "installs 9 tracked_from=2021-05-01 notice tracked-before-install:"
                + " 2021-05-01 is"
                + " before the install on 2021-05-11. The device is counted from the"
                + " install. Correct"
                + " whichever date is wrong.")
        .judges();
  }

  @Test
  void trackedAfterTheCutIsNoticed() {
    TestCluster.sound(
            install(9, "D2", "2021-05-11", "trackedFrom", "2026-05-01"),
            visit(10, "D2", "2021-08-01"))
        .finds(
            "installs 9 tracked_from=2026-05-01 notice tracked-after-cut:"
                + " 2026-05-01 is after"
                + " the data cut of 2025-12-31. The device adds no time under observation yet."
                + " Correct the date if it is wrong.")
        .judges();
  }

  @Test
  void deviceNeverVisited() {
    TestCluster.sound(install(9, "D2", "2021-05-11"))
        .finds(
            "installs 9 device_id=D2 notice device-never-visited: Device \"D2\","
                + " installed on 2021-05-11, has no visit that counts, so its state is not"
                + " known. Add its"
                + " visits, or plan one.")
        .judges();
  }

  @Test
  void deviceWhoseVisitsCouldNotBeUsed() {
    TestCluster.sound(install(9, "D2", "2021-05-11"), visit(10, "D2", "2020-08-01"))
        .finds(
            "installs 9 device_id=D2 notice device-never-visited: Device \"D2\","
                + " installed on 2021-05-11, has no visit that counts, so its state is not"
                + " known. Of its"
                + " visits, 1 row could not be used. Add its visits, or plan one.",
            "revisits 10 visited_on=2020-08-01 set-aside visit-before-install: The"
                + " visit on"
                + " 2020-08-01 is before the install of device \"D2\" on 2021-05-11"
                + " ({row:4/0/9})."
                + " The row was set aside. Correct whichever date is wrong.")
        .judges("10 SET_ASIDE");
  }

  @Test
  void deviceWithoutCost() {
    Install free =
        TestRow.of(Install.class, 9, "deviceId", "D2", "siteId", "S1", "installedOn", "2021-05-11");
    TestCluster.sound(free, visit(10, "D2", "2021-08-01"))
        .finds(
            "installs 9 device_id=D2 notice device-without-cost: No cost of any kind is"
                + " recorded for device \"D2\": no lines, hours or lump sum, and none at"
                + " its visits."
                + " It is left out of real cost figures. Add what is known.")
        .judges();
  }

  @Test
  void aCostAtAVisitIsACost() {
    Install free =
        TestRow.of(Install.class, 9, "deviceId", "D2", "siteId", "S1", "installedOn", "2021-05-11");
    TestCluster.sound(free, visit(10, "D2", "2021-08-01", "costUsd", 5.0)).finds().judges();
  }
}
