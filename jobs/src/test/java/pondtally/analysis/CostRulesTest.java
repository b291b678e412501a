package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pondtally.analysis.CostLine.Payment;
import pondtally.analysis.CostLine.Stage;
import pondtally.record.Action;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.MaterialItem;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;
import pondtally.record.Visit;
import pondtally.stats.PriceIndex;

class CostRulesTest {

  private static final Prices PRICES = new Prices(index(), 2024);
  private static final CostRules RULES = new CostRules(PRICES, 30, 20.0);

  private static PriceIndex index() {
    return PriceIndex.of(
        new TreeMap<>(Map.of(2020, 100.0, 2021, 105.0, 2022, 110.0, 2023, 115.0, 2024, 120.0)));
  }

  private static int day(String date) {
    return (int) LocalDate.parse(date).toEpochDay();
  }

  private static Origin row(int row) {
    return new Origin(0, 0, row, false);
  }

  private static Install install(Double labor, Double volunteer, Double lump) {
    return new Install(
        row(2),
        "p",
        "D1",
        "S1",
        day("2020-05-01"),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        "fund",
        labor,
        volunteer,
        lump,
        null,
        null,
        null,
        null);
  }

  private static MaterialLine line(
      int row, double quantity, Double unit, Double total, String on, String by) {
    return new MaterialLine(
        row(row),
        "p",
        "D1",
        MaterialItem.PIPE,
        quantity,
        null,
        unit,
        total,
        on == null ? null : (Integer) day(on),
        by,
        null);
  }

  private static Visit visit(String on, Double hours, Double volunteers, Double cost) {
    return new Visit(
        row(9),
        "p",
        "D1",
        day(on),
        Condition.WORKING,
        null,
        Action.NONE,
        null,
        hours,
        volunteers,
        cost,
        null,
        null,
        null,
        null,
        null);
  }

  private static double sum(DeviceCost cost, Stage stage, Payment payment) {
    return cost.lines().stream()
        .filter(line -> line.stage() == stage && line.payment() == payment)
        .mapToDouble(CostLine::realUsd)
        .sum();
  }

  @Test
  void linesHoursAndVisitsAddUp() {
    DeviceCost cost =
        RULES.of(
            List.of(install(10.0, 5.0, null)),
            List.of(
                line(3, 4, 25.0, null, null, null),
                line(4, 1, null, 60.0, "2020-04-20", CostRules.IN_KIND),
                line(5, 1, null, 50.0, "2024-06-01", null)),
            List.of(visit("2024-06-01", 2.0, 1.0, 12.0)));
    // Materials of 2020 are worth 120/100 of their price in 2024; labor is 30 an hour as it stands.
    assertEquals(4 * 25 * 1.2 + 10 * 30, sum(cost, Stage.BUILD, Payment.CASH), 1e-9);
    assertEquals(60 * 1.2, sum(cost, Stage.BUILD, Payment.IN_KIND), 1e-9);
    assertEquals(5 * 20, sum(cost, Stage.BUILD, Payment.VOLUNTEER), 1e-9);
    assertEquals(50 + 2 * 30 + 12, sum(cost, Stage.UPKEEP, Payment.CASH), 1e-9);
    assertEquals(1 * 20, sum(cost, Stage.UPKEEP, Payment.VOLUNTEER), 1e-9);
    assertTrue(cost.built());
  }

  @Test
  void aLumpSumCountsOnlyWhereThereIsNothingElse() {
    DeviceCost lump = RULES.of(List.of(install(null, null, 900.0)), List.of(), List.of());
    assertEquals(900 * 1.2, sum(lump, Stage.BUILD, Payment.CASH), 1e-9);
    assertNull(lump.lumpSumDifferenceUsd());

    DeviceCost both =
        RULES.of(
            List.of(install(10.0, null, 900.0)),
            List.of(line(3, 1, null, 500.0, null, null)),
            List.of());
    assertEquals(500 * 1.2 + 300, sum(both, Stage.BUILD, Payment.CASH), 1e-9);
    assertEquals(900 - 800, both.lumpSumDifferenceUsd(), 1e-9);

    DeviceCost later =
        RULES.of(
            List.of(install(null, null, 900.0)),
            List.of(line(3, 1, null, 50.0, "2024-06-01", null)),
            List.of());
    assertEquals(900 * 1.2, sum(later, Stage.BUILD, Payment.CASH), 1e-9);
    assertEquals(50, sum(later, Stage.UPKEEP, Payment.CASH), 1e-9);
  }

  @Test
  void aLumpSumHoldsThePaidHoursButNotTheVolunteers() {
    DeviceCost cost = RULES.of(List.of(install(10.0, 5.0, 900.0)), List.of(), List.of());
    assertEquals(900 * 1.2, sum(cost, Stage.BUILD, Payment.CASH), 1e-9);
    assertEquals(5 * 20, sum(cost, Stage.BUILD, Payment.VOLUNTEER), 1e-9);
  }

  @Test
  void noBuildingRecordIsUnknownNotZero() {
    DeviceCost cost =
        RULES.of(
            List.of(install(null, null, null)),
            List.of(),
            List.of(visit("2021-01-01", 2.0, null, null)));
    assertFalse(cost.built());
  }

  @Test
  void volunteersWithoutARateAreHoursOnly() {
    CostRules unvalued = new CostRules(PRICES, 30, null);
    DeviceCost cost = unvalued.of(List.of(install(null, 5.0, null)), List.of(), List.of());
    assertTrue(cost.lines().isEmpty());
    assertEquals(5, cost.volunteerHours().get(0).hours(), 0);
  }

  @Test
  void theInstallersFunderPaysWhatNoLineAssigns() {
    DeviceCost cost =
        RULES.of(
            List.of(install(1.0, null, null)),
            List.of(line(3, 1, null, 10.0, null, "other fund")),
            List.of());
    assertEquals(10, cost.lines().get(0).nominalUsd(), 0);
    assertEquals("other fund", cost.lines().get(0).payer());
    assertEquals(30, cost.lines().get(1).nominalUsd(), 0);
    assertEquals("fund", cost.lines().get(1).payer());
  }
}
