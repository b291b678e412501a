package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.MaterialItem;
import pondtally.record.MaterialLine;
import pondtally.record.Visit;

class CostRulesTest {

  private static MaterialLine line(
      int row, double quantity, Double unitCostUsd, Double totalCostUsd, String purchasedOn) {
    return TestRow.of(
        MaterialLine.class,
        row,
        "deviceId",
        "D1",
        "item",
        MaterialItem.PIPE,
        "quantity",
        quantity,
        "unitCostUsd",
        unitCostUsd,
        "totalCostUsd",
        totalCostUsd,
        "purchasedOn",
        purchasedOn);
  }

  private static TestCluster withLumpSum(Double hours, MaterialLine... lines) {
    Install install =
        TestRow.of(
            Install.class,
            3,
            "deviceId",
            "D1",
            "siteId",
            "S1",
            "installedOn",
            "2020-05-01",
            "installCostUsd",
            1200.0,
            "laborHours",
            hours);
    Visit visit =
        TestRow.of(
            Visit.class,
            4,
            "deviceId",
            "D1",
            "visitedOn",
            "2020-11-01",
            "condition",
            Condition.WORKING);
    TestCluster cluster = TestCluster.of(TestCluster.soundSite(), install, visit);
    cluster.add(lines);
    return cluster;
  }

  @Test
  void costLineWithoutDevice() {
    MaterialLine row =
        TestRow.of(MaterialLine.class, 7, "deviceId", "D1", "quantity", 1.0, "totalCostUsd", 2.0);
    TestCluster.of(row)
        .finds(
            "materials 7 device_id=D1 set-aside unknown-device: The cost line has"
                + " no device: no"
                + " install row that counts has the id \"D1\". The row was set"
                + " aside. Correct"
                + " the id, or add the install (or correct its row, if that was set aside).")
        .judges("7 SET_ASIDE");
  }

  @Test
  void totalThatIsNotQuantityTimesUnitCost() {
    TestCluster.sound(line(7, 12, 104.5, 1300.0, null))
        .finds(
            "materials 7 total_cost_usd=1300 notice cost-inconsistent: 12 × $104.50 is"
                + " $1,254.00, but the total of the line is $1,300.00. The total is used. If it"
                + " includes tax or freight, nothing needs correcting.")
        .judges();
  }

  @Test
  void lineWithoutAnyCost() {
    TestCluster.sound(line(7, 12, null, null, null))
        .finds(
            "materials 7 - set-aside cost-missing: The line has neither a unit"
                + " cost nor a total"
                + " that could be used. The row was set aside. Add one of the two.")
        .judges("7 SET_ASIDE");
  }

  @Test
  void unitCostRoundedToTheCentIsConsistent() {
    TestCluster.sound(line(7, 3, 33.33, 100.0, null), line(8, 300, 0.33, 100.0, null))
        .finds()
        .judges();
  }

  @Test
  void purchaseInTheFutureIsDropped() {
    TestCluster cluster = TestCluster.sound(line(7, 1, null, 10.0, "2030-01-01"));
    cluster
        .finds(
            "materials 7 purchased_on=2030-01-01 changed date-after-cut:"
                + " 2030-01-01 is in the"
                + " future (this check was run on 2026-03-10). The date was dropped: the line is"
                + " counted on the day of the install. Correct the date.")
        .judges("7 CHANGED");
    assertNull(cluster.checked().kept().materials().get(0).purchasedOn());
  }

  @Test
  void purchaseAfterTheCutWaits() {
    TestCluster.sound(line(7, 1, null, 10.0, "2026-01-01"))
        .finds(
            "materials 7 purchased_on=2026-01-01 set-aside date-after-cut:"
                + " 2026-01-01 is after"
                + " the data cut of 2025-12-31, so the row is not counted and was set"
                + " aside. If the"
                + " date is wrong, correct it; if it is right, set as_of in program.yaml to"
                + " 2026-01-01 or later to count the row.")
        .judges("7 SET_ASIDE");
  }

  @Test
  void lumpSumThatDiffersFromTheLines() {
    withLumpSum(null, line(7, 2, 400.0, null, null), line(8, 1, null, 150.0, "2020-04-01"))
        .finds(
            "installs 3 install_cost_usd=1200 notice lump-sum-beside-lines: The"
                + " lump sum of"
                + " $1,200.00 stands beside 2 material lines of $950.00. The lines are"
                + " counted, the"
                + " lump sum is not. If it holds something more, add a line for that.")
        .judges();
  }

  @Test
  void lumpSumBesideLinesAndHours() {
    withLumpSum(7.5, line(7, 3, 400.0, null, null))
        .finds(
            "installs 3 install_cost_usd=1200 notice lump-sum-beside-lines: The"
                + " lump sum of"
                + " $1,200.00 stands beside 1 material line of $1,200.00 and 7.5 hours."
                + " The lines and"
                + " hours are counted, the lump sum is not. If it holds something more,"
                + " add a line"
                + " for that.")
        .judges();
  }

  @Test
  void lumpSumThatEqualsTheLines() {
    withLumpSum(null, line(7, 3, 400.0, null, null)).finds().judges();
  }

  @Test
  void linesOfUpkeepDoNotCompeteWithTheLumpSum() {
    withLumpSum(8.0, line(7, 1, 40.0, null, "2022-05-01")).finds().judges();
  }
}
