package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import pondtally.record.PipeWall;

/** Groups by wall and nominal diameter. Nominal sizes are common practice, no source. */
class PipeTypeTest {

  private static String label(PipeWall wall, Double diameterIn) {
    return PipeType.of(Designs.pipe(wall, diameterIn));
  }

  @Test
  void theLabelIsWallAndDiameter() {
    assertEquals("dual 12 in", label(PipeWall.DUAL, 12.0));
    assertEquals("single 10 in", label(PipeWall.SINGLE, 10.0));
    assertEquals("smooth 48 in", label(PipeWall.SMOOTH, 48.0));
  }

  @Test
  void metricPipeGoesByItsNominalSize() {
    // An inch is 25.4 mm exactly (international yard and pound agreement, 1959).
    double[][] millimetersAndInches = {
      {100, 4},
      {150, 6},
      {200, 8},
      {250, 10},
      {300, 12},
      {375, 15},
      {450, 18},
      {600, 24},
      {750, 30},
      {900, 36},
      {1200, 48}
    };
    for (double[] size : millimetersAndInches) {
      assertEquals(size[1], PipeType.nominalIn(size[0] / 25.4), size[0] + " mm");
    }
  }

  @Test
  void fourPerCentOffIsStillTheNominalSize() {
    assertEquals(12, PipeType.nominalIn(12.48));
    assertEquals(12, PipeType.nominalIn(11.52));
    assertEquals(15, PipeType.nominalIn(15.6));
    assertEquals(12.5, PipeType.nominalIn(12.49));
    assertEquals(11.5, PipeType.nominalIn(11.51));
  }

  @Test
  void anyOtherDiameterIsItselfToATenth() {
    assertEquals("dual 13.5 in", label(PipeWall.DUAL, 13.46));
    assertEquals("dual 20 in", label(PipeWall.DUAL, 20.04));
    assertEquals("dual 3 in", label(PipeWall.DUAL, 3.0));
  }

  @Test
  void whatIsNotRecordedIsUnknown() {
    assertEquals("unknown", label(null, 12.0));
    assertEquals("unknown", label(PipeWall.DUAL, null));
    assertEquals("unknown", label(null, null));
  }

  @Test
  void aDeviceWithoutAPipeSaysSo() {
    assertEquals("no pipe", label(PipeWall.NONE, null));
    assertEquals("no pipe", label(PipeWall.NONE, 12.0));
  }
}
