package pondtally.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;

class FoldingTest {

  @Test
  void resultsAreTakenInTheOrderOfTheirParts() {
    Folding<String> folding = new Folding<>(String::concat);
    folding.add(2, "c");
    folding.add(1, "b");
    assertNull(folding.sum(), "part 0 has not come");
    folding.add(0, "a");
    assertEquals("abc", folding.sum());
    folding.add(4, "e");
    assertEquals("abc", folding.sum(), "part 3 has not come");
    folding.add(3, "d");
    assertEquals("abcde", folding.sum());
  }
}
