package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pondtally.record.Action;
import pondtally.record.Condition;
import pondtally.record.Expense;
import pondtally.record.ExpenseKind;
import pondtally.record.MaterialItem;
import pondtally.record.Origin;
import pondtally.record.RequestOutcome;
import pondtally.stats.PriceIndex;

/** Requests, agreements and permits, removal that went on, expenses and purchases, by hand. */
class OfficeRowsTest {

  private static final AnalysisSettings SETTINGS = MoneyProgram.settings();

  private static MoneyProgram program() {
    return new MoneyProgram()
        .agreed("S1", "2024-12-30", "2025-03-31")
        .agreed("S2", "2025-12-31", "2027-01-01")
        .agreed("S3", "2025-01-10", null)
        .device("D1", "S1", "2023-01-01", 1000.0)
        .visit("D1", "2024-12-01", Condition.WORKING, Action.NONE, null)
        .device("D2", "S2", "2023-01-01", 1000.0)
        .visit("D2", "2024-12-01", Condition.FAILED, Action.NONE, null);
  }

  @Test
  void requestsAreCountedByOutcomeAndThoseThatWaitAreNotDecided() {
    RequestTally tally = new RequestTally(SETTINGS);
    tally.add(
        program()
            .request("S1", "2022-11-01", RequestOutcome.INSTALLED)
            .request("S2", "2022-12-31", RequestOutcome.INSTALLED)
            .request("S3", "2023-01-01", RequestOutcome.DECLINED)
            .request("S3", "2023-05-01", RequestOutcome.UNSUITABLE)
            .request("S3", "2024-05-01", RequestOutcome.WAITING)
            .request("S3", "2024-05-02", null)
            .request("S3", "2025-01-01", RequestOutcome.DECLINED)
            .view());
    List<RequestTally.Row> rows = tally.rows();
    RequestTally.Row all = row(rows, "all");
    // The one of 2025 lies after the data cut.
    assertEquals(
        List.of(6L, 2L, 1L, 1L, 1L, 1L),
        List.of(
            all.asked(),
            all.installed(),
            all.unsuitable(),
            all.waiting(),
            all.declined(),
            all.notRecorded()));
    assertEquals(0.5, all.installedShare());
    // 2 of 4 by Wilson 1927: (2 + z^2/2 -+ z sqrt(1 + z^2/4)) / (4 + z^2), z = 1.959964.
    assertEquals(0.1500, all.lower(), 5e-5);
    assertEquals(0.8500, all.upper(), 5e-5);
    assertEquals(1, all.installedWorking()); // D2 stands failed
    assertEquals(2, row(rows, "2022").asked());
    assertEquals(2, row(rows, "2023").asked());
    assertNull(row(rows, "2024").installedShare());
  }

  private static RequestTally.Row row(List<RequestTally.Row> rows, String year) {
    return rows.stream()
        .filter(row -> row.grouping().equals("all") && row.year().equals(year))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anAgreementHoldsThroughItsLastDay() {
    List<String> lapses =
        Lapses.of(program().view(), SETTINGS).stream()
            .map(
                row ->
                    row.siteId() + " " + row.what() + " " + row.standing() + " " + row.daysLeft())
            .toList();
    // The data cut is 31 December 2024; S3 has no device.
    assertEquals(
        List.of(
            "S1 agreement lapsed -1",
            "S1 permit within-90-days 90",
            "S2 agreement within-a-year 365",
            "S2 permit later 731"),
        lapses);
  }

  @Test
  void sitesWhereRemovalWentOnAreShownFromTheFirstWholeYear() {
    List<ContinuedRemovals.Row> rows =
        ContinuedRemovals.of(
            program()
                .removed("S1", 2022, 5)
                .removed("S1", 2023, 2)
                .removed("S1", 2024, 0)
                .removed("S3", 2024, 4)
                .view(),
            SETTINGS);
    assertEquals(1, rows.size());
    assertEquals("S1", rows.get(0).siteId());
    assertEquals(2023, rows.get(0).year());
    assertEquals(3, rows.get(0).removalsPerYearBefore());
    assertEquals(2, rows.get(0).removals());
    assertEquals(1, rows.get(0).workingShare(), 1e-12);
  }

  @Test
  void expensesAreInDollarsOfTheBaseYearByFiscalYear() {
    TreeMap<Integer, Double> index = new TreeMap<>();
    index.put(2023, 100.0);
    index.put(2024, 110.0);
    List<ExpenseRows.Row> rows =
        ExpenseRows.rows(
            List.of(
                expense("2023-06-01", ExpenseKind.TRAVEL, 200.0, 300.0, "fund-a"),
                expense("2024-06-01", ExpenseKind.TRAVEL, 50.0, null, "in-kind"),
                expense("2024-07-01", ExpenseKind.PERMIT, 80.0, null, "fund-a"),
                expense("2022-07-01", ExpenseKind.PERMIT, 80.0, null, "fund-a"),
                expense("2025-07-01", ExpenseKind.PERMIT, 80.0, null, "fund-a")),
            SETTINGS,
            new Prices(PriceIndex.of(index), 2024));
    ExpenseRows.Row all =
        rows.stream()
            .filter(row -> row.kind().equals("all") && row.year().equals("all"))
            .findFirst()
            .orElseThrow();
    assertEquals(4, all.lines());
    assertEquals(200 * 1.1 + 80, all.cashUsd(), 1e-9);
    assertEquals(50, all.inKindUsd(), 1e-9);
    assertEquals(300, all.miles());
    assertEquals(1, all.linesBeforeIndex());
  }

  private static Expense expense(
      String on, ExpenseKind kind, Double usd, Double miles, String paidBy) {
    return new Expense(
        new Origin(0, 0, 2, false), "p", MoneyProgram.day(on), kind, usd, miles, paidBy, null);
  }

  /** Each leveler: 20 ft of pipe in sections of 10 ft, and a fence 5 ft across. */
  @Test
  void whatToBuyFollowsTheDesignsAndWhatRepairsTook() {
    BuyingTally tally = new BuyingTally();
    tally.add(
        new MoneyProgram()
            .site("S1", 500.0)
            .device("D1", "S1", "2020-01-01", 1000.0)
            .visit("D1", "2021-01-01", Condition.FAILED, Action.REPAIRED, 90.0)
            .visit("D1", "2022-01-01", Condition.FAILED, Action.REPAIRED, 90.0)
            .visit("D1", "2023-01-01", Condition.FAILED, Action.REPLACED, 900.0)
            .bought("D1", MaterialItem.COUPLER, 3, "each", "2021-01-01")
            .bought("D1", MaterialItem.PIPE, 10, "ft", "2022-01-01")
            .bought("D1", MaterialItem.PIPE, 20, "ft", "2022-12-20")
            .view());
    BuyingTally.Needs needs = tally.needs().get("dual 12 in");
    assertEquals(1, needs.perReplacement(MaterialItem.PIPE));
    assertEquals(1, needs.perReplacement(MaterialItem.COUPLER));
    assertEquals(1, needs.perReplacement(MaterialItem.FENCE_PANEL));
    assertEquals(2, needs.repairs());
    assertEquals(3, needs.inRepairs(MaterialItem.COUPLER));
    assertEquals(0.5, needs.inRepairs(MaterialItem.PIPE)); // the 20 ft went into the replacement
    BuyingList.Row couplers =
        BuyingList.rows(List.of(season(2.5, 4, 12)), tally).stream()
            .filter(row -> row.item().equals("coupler"))
            .findFirst()
            .orElseThrow();
    // 2.5 replacements of one coupler, 4 repairs of 3/2: 8.5; 12 failures instead of 6.5: 15.7.
    assertEquals(8.5, couplers.expectedQuantity(), 1e-12);
    assertEquals(9, couplers.buy());
    assertEquals(16, couplers.toHave());
  }

  private static SeasonForecast.Row season(double replacements, double repairs, double upper) {
    return new SeasonForecast.Row(
        "pipe",
        "dual 12 in",
        1,
        null,
        null,
        10L,
        0L,
        replacements + repairs,
        1.0,
        upper,
        repairs,
        replacements,
        20.0,
        null,
        null,
        null,
        null,
        null,
        "all",
        null);
  }
}
