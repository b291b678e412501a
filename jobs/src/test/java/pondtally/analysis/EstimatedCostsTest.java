package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.MaterialItem;

class EstimatedCostsTest {

  /** Three devices with lines; a fourth without any cost; a fifth with a lump sum. */
  private static MoneyProgram program(int itemized) {
    double[] pipe = {400, 300, 500};
    double[] coupler = {40, 42, 60};
    double[] fence = {160, 150, 200};
    double[] wire = {10, 30, 20};
    double[] hours = {6, 8, 20};
    MoneyProgram program = new MoneyProgram().site("S1", null);
    for (int i = 0; i < itemized; i++) {
      String id = "D" + i;
      program
          .device(id, "S1", "2020-05-01", hours[i], null, "fund-a")
          .material(id, MaterialItem.PIPE, 1, pipe[i], null, null)
          .material(id, MaterialItem.COUPLER, 1, coupler[i], null, null)
          .material(id, MaterialItem.FENCE_PANEL, 1, fence[i], null, null)
          .material(id, MaterialItem.WIRE, 1, wire[i], null, null);
    }
    return program
        .device("unknown", "S1", "2024-06-01", null)
        .device("lump", "S1", "2024-06-01", 99_999.0);
  }

  private static EstimatedCosts costs(int itemized) {
    EstimatedTally tally = new EstimatedTally();
    tally.add(program(itemized).view());
    return EstimatedCosts.of(tally, MoneyProgram.settings());
  }

  @Test
  void fillsAnUnknownCostFromTheMiddleUnitCostOfEachPart() {
    // All designs alike: pipe 400, coupler 42, fence 160, wire 20, eight hours at $30.
    // A unit cost is held to a hundredth of a cent: 15.7 ft of fence make it 0.08 cents at most.
    EstimatedCosts costs = costs(3);
    double expected = 400 + 42 + 160 + 20 + 8 * 30;
    assertEquals(expected, costs.usd(GroupKey.ALL, "all"), 0.001);
    assertEquals(expected, costs.usd(GroupKey.ALL, "2024"), 0.001);
    assertEquals(1, costs.devices(GroupKey.ALL, "2024"));
    assertNull(costs.usd(GroupKey.ALL, "2020"));
  }

  @Test
  void marksTheDeviceAndKeepsTheEstimateOutOfRecordedCost() {
    List<DeviceRow> rows = costs(3).fill(DeviceRow.of(program(3).view(), MoneyProgram.settings()));
    for (DeviceRow row : rows) {
      assertEquals(row.deviceId().equals("unknown"), row.costEstimatedUsd() != null);
      assertEquals(row.deviceId().equals("unknown"), row.costRecordedUsd() == null);
    }
  }

  @Test
  void estimatesNothingFromTwoDevices() {
    assertNull(costs(2).usd(GroupKey.ALL, "all"));
  }
}
