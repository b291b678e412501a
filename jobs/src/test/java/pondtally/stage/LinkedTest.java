package pondtally.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LinkedTest {

  @Test
  void sitesThatAreAloneAreTheirOwnCluster() {
    assertEquals("S9", Linked.of(List.of(), Map.of()).cluster("S9"));
  }

  @Test
  void chainsOfSharedPondsAndPropertiesAreOneCluster() {
    Linked linked =
        Linked.of(
            List.of(List.of("S4", "S3"), List.of("S7", "S8"), List.of("S3", "S2", "S5")), Map.of());
    for (String site : List.of("S2", "S3", "S4", "S5")) {
      assertEquals("S2", linked.cluster(site));
    }
    assertEquals("S7", linked.cluster("S8"));
    assertEquals("S6", linked.cluster("S6"));
  }

  @Test
  void theOrderOfLinksDoesNotMatter() {
    Linked a =
        Linked.of(List.of(List.of("A", "B"), List.of("C", "D"), List.of("B", "C")), Map.of());
    Linked b =
        Linked.of(List.of(List.of("C", "B"), List.of("D", "C"), List.of("B", "A")), Map.of());
    for (String site : List.of("A", "B", "C", "D")) {
      assertEquals("A", a.cluster(site));
      assertEquals(a.cluster(site), b.cluster(site));
    }
  }
}
