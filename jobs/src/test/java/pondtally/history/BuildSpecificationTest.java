package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pondtally.history.SpecificationItem.BOTTOM_SLITS;
import static pondtally.history.SpecificationItem.FENCE_DIAMETER;
import static pondtally.history.SpecificationItem.FENCE_WIRE;
import static pondtally.history.SpecificationItem.GAS_HOLES;
import static pondtally.history.SpecificationItem.INLET_TIED;
import static pondtally.history.SpecificationItem.OUTLET_HIGHEST;
import static pondtally.history.SpecificationItem.PIPE_COVERED;
import static pondtally.history.SpecificationItem.RIGID_FENCE;
import static pondtally.history.SpecificationItem.SECTION_LENGTH;
import static pondtally.history.SpecificationItem.TOP_SLIT;
import static pondtally.history.SpecificationItem.WEIGHTED;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pondtally.history.Designs.Design;
import pondtally.record.FenceForm;
import pondtally.record.PipeWall;

/** Built to specification: every item is common practice in the trade, no source. */
class BuildSpecificationTest {

  /** A double-wall device that meets all eleven items. */
  private static Design whole(PipeWall wall, Double diameterIn) {
    Design design = new Design(wall, diameterIn);
    design.sectionLengthFt = 10.0;
    design.fenceDiameterFt = DesignQuantities.fenceDiameterFt(16, 4 / 12.0);
    design.wireGauge = 6.0;
    design.fenceForm = FenceForm.PANEL;
    design.topSlits = 1;
    design.bottomSlits = 4;
    design.gasHoles = true;
    design.weights = 4;
    design.inletTied = true;
    design.outletHighest = true;
    design.pipeCovered = true;
    return design;
  }

  private static BuildJudgement judge(Design design) {
    return BuildSpecification.judge(design.install());
  }

  private static Boolean fence(Double pipeIn, Double acrossFt) {
    Design design = new Design(PipeWall.DUAL, pipeIn);
    design.fenceDiameterFt = acrossFt;
    return FENCE_DIAMETER.verdict(design.install());
  }

  @Test
  void everyItemMetIsBuiltToSpecification() {
    assertEquals(new BuildJudgement(11, 11, BuildGroup.MET), judge(whole(PipeWall.DUAL, 12.0)));
  }

  @Test
  void singleAndSmoothWallAreJudgedByFewerItems() {
    assertEquals(new BuildJudgement(8, 8, BuildGroup.MET), judge(whole(PipeWall.SINGLE, 12.0)));
    assertEquals(new BuildJudgement(7, 7, BuildGroup.MET), judge(whole(PipeWall.SMOOTH, 12.0)));
  }

  @Test
  void oneItemMissedIsNotBuiltToSpecification() {
    Design design = whole(PipeWall.DUAL, 12.0);
    design.fenceForm = FenceForm.ROLL;
    assertEquals(new BuildJudgement(10, 11, BuildGroup.NOT_MET), judge(design));
  }

  @Test
  void underSixItemsJudgedTheBuildIsNotJudged() {
    Design design = new Design(PipeWall.SMOOTH, 12.0);
    design.wireGauge = 6.0;
    design.fenceForm = FenceForm.ROLL;
    design.weights = 4;
    design.inletTied = true;
    design.outletHighest = true;
    assertEquals(new BuildJudgement(4, 5, BuildGroup.NOT_JUDGED), judge(design));
    design.pipeCovered = true;
    assertEquals(new BuildJudgement(5, 6, BuildGroup.NOT_MET), judge(design));
    design.fenceForm = FenceForm.PANEL;
    assertEquals(new BuildJudgement(6, 6, BuildGroup.MET), judge(design));
  }

  @Test
  void aFenceWithoutAPipeIsJudgedByItsFenceAlone() {
    assertEquals(
        new BuildJudgement(2, 2, BuildGroup.NOT_JUDGED), judge(whole(PipeWall.NONE, null)));
  }

  @Test
  void nothingRecordedIsNotJudged() {
    assertEquals(new BuildJudgement(0, 0, BuildGroup.NOT_JUDGED), judge(new Design(null, null)));
  }

  @Test
  void anIntakeFenceIsFiveFeetAcrossForTenAndTwelveInchPipe() {
    assertTrue(fence(12.0, (16 - 1 / 3.0) / Math.PI)); // 4.99 ft
    assertTrue(fence(10.0, 4.9));
    assertTrue(fence(300 / 25.4, 5.0));
    assertFalse(fence(12.0, 4.89));
  }

  @Test
  void anIntakeFenceIsSixFeetAcrossForFifteenInchPipe() {
    assertTrue(fence(15.0, 5.9));
    assertFalse(fence(15.0, 5.89));
    assertFalse(fence(375 / 25.4, 5.0));
  }

  @Test
  void anIntakeFenceForOtherPipeIsNotJudged() {
    assertNull(fence(8.0, 5.0));
    assertNull(fence(18.0, 6.0));
    assertNull(fence(12.6, 6.0));
    assertNull(fence(null, 5.0));
    assertNull(fence(12.0, null));
  }

  @Test
  void wireOfASmallerGaugeNumberIsHeavier() {
    Design design = new Design(PipeWall.DUAL, 12.0);
    assertNull(FENCE_WIRE.verdict(design.install()));
    design.wireGauge = 4.0;
    assertTrue(FENCE_WIRE.verdict(design.install()));
    design.wireGauge = 6.5;
    assertFalse(FENCE_WIRE.verdict(design.install()));
  }

  @Test
  void doubleWallPipeIsLaidInSectionsOfTenFeetOrLess() {
    Design design = whole(PipeWall.DUAL, 12.0);
    design.sectionLengthFt = 20 / 2.0; // a 20 ft length cut in two
    assertTrue(SECTION_LENGTH.verdict(design.install()));
    design.sectionLengthFt = 3.05 / 0.3048;
    assertTrue(SECTION_LENGTH.verdict(design.install()));
    design.sectionLengthFt = 10.1;
    assertFalse(SECTION_LENGTH.verdict(design.install()));
    assertNull(SECTION_LENGTH.verdict(whole(PipeWall.SINGLE, 12.0).install()));
  }

  @Test
  void slitsAndGasHolesGoByTheWall() {
    Design design = whole(PipeWall.DUAL, 12.0);
    design.topSlits = 0;
    design.bottomSlits = 3;
    design.gasHoles = false;
    assertFalse(TOP_SLIT.verdict(design.install()));
    assertFalse(BOTTOM_SLITS.verdict(design.install()));
    assertFalse(GAS_HOLES.verdict(design.install()));
    Design single = whole(PipeWall.SINGLE, 12.0);
    assertTrue(TOP_SLIT.verdict(single.install()));
    assertNull(BOTTOM_SLITS.verdict(single.install()));
    assertNull(GAS_HOLES.verdict(single.install()));
    assertNull(TOP_SLIT.verdict(whole(PipeWall.SMOOTH, 12.0).install()));
    assertNull(TOP_SLIT.verdict(whole(null, 12.0).install()));
  }

  @Test
  void thePipeIsWeightedTiedCoveredAndItsOutletHighest() {
    Design design = whole(PipeWall.SMOOTH, 12.0);
    design.weights = 0;
    design.inletTied = false;
    design.outletHighest = false;
    design.pipeCovered = false;
    for (SpecificationItem item : List.of(WEIGHTED, INLET_TIED, OUTLET_HIGHEST, PIPE_COVERED)) {
      assertFalse(item.verdict(design.install()), item.code());
      assertNull(item.verdict(whole(PipeWall.NONE, null).install()), item.code());
    }
  }

  @Test
  void aProgramMayChooseItsOwnItems() {
    Design design = whole(PipeWall.DUAL, 12.0);
    design.fenceForm = FenceForm.ROLL;
    List<SpecificationItem> own =
        List.of(FENCE_WIRE, SECTION_LENGTH, TOP_SLIT, BOTTOM_SLITS, GAS_HOLES, WEIGHTED);
    assertEquals(
        new BuildJudgement(6, 6, BuildGroup.MET), BuildSpecification.judge(design.install(), own));
    assertEquals(
        BuildGroup.NOT_JUDGED,
        BuildSpecification.judge(design.install(), List.of(RIGID_FENCE)).group());
  }

  @Test
  void everyItemHasACodeOfItsOwnAndADescription() {
    Set<String> codes = new TreeSet<>();
    for (SpecificationItem item : SpecificationItem.values()) {
      assertTrue(codes.add(item.code()), item.code());
      assertFalse(item.description().isBlank(), item.code());
    }
  }
}
