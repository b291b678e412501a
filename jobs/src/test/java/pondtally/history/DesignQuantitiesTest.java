package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Facts of the trade that the specification rests on: common practice, no source. */
class DesignQuantitiesTest {

  @Test
  void a16FootPanelLappedByOne4InchSquareMakesANominal5FootFence() {
    assertEquals(4.99, DesignQuantities.fenceDiameterFt(16, 4 / 12.0), 0.005);
  }

  @Test
  void a20FootLengthCutInTwoIsTwoSectionsAndOneCoupler() {
    assertEquals(2, DesignQuantities.sections(20, 10));
    assertEquals(1, DesignQuantities.couplers(2));
  }

  @Test
  void nSectionsTakeOneCouplerFewer() {
    assertEquals(4, DesignQuantities.sections(40, 10));
    assertEquals(3, DesignQuantities.couplers(4));
    assertEquals(0, DesignQuantities.couplers(1));
    assertEquals(0, DesignQuantities.couplers(0));
  }

  @Test
  void aShorterLastSectionCountsAndRoundedMetersDoNotAddOne() {
    assertEquals(5, DesignQuantities.sections(42, 10));
    // 12.2 m in sections of 3.05 m is four sections, although 40.026 ft / 10.007 ft is not exact.
    assertEquals(4, DesignQuantities.sections(12.2 / 0.3048, 3.05 / 0.3048));
  }
}
