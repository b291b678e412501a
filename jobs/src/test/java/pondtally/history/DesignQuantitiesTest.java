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

  /** Common practice: pipe comes in 20 ft, panels are 16 ft long and lap by 4 in; no source. */
  @Test
  void whatToBuyForADesign() {
    assertEquals(1, DesignQuantities.stockLengths(20));
    assertEquals(2, DesignQuantities.stockLengths(20.5));
    assertEquals(3, DesignQuantities.stockLengths(60));
    // (16 - 1/3)/pi = 4.99 ft: one panel makes a 5 ft fence; 6 ft take two.
    assertEquals(1, DesignQuantities.panels(5));
    assertEquals(2, DesignQuantities.panels(6));
    assertEquals(2, DesignQuantities.panels(10));
    assertEquals(15.708 + 1 / 3.0, DesignQuantities.panelFt(5), 0.0005);
    assertEquals(18.850 + 2 / 3.0, DesignQuantities.panelFt(6), 0.0005);
  }
}
