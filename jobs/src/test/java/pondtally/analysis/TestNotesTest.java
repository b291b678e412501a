package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.stats.CountedLives;
import pondtally.stats.LogRank;
import pondtally.stats.LogRankWeight;
import pondtally.stats.RiskTable;

class TestNotesTest {

  /** So many lives, one failing on each odd day. */
  private static RiskTable group(int lives) {
    CountedLives counted = CountedLives.ofOneKind();
    for (int i = 1; i <= lives; i++) {
      counted.add(0, i, i % 2);
    }
    return counted.anyEvent();
  }

  private static LogRank test(int a, int b) {
    return LogRank.of(List.of(group(a), group(b)), LogRankWeight.LOG_RANK);
  }

  @Test
  void fewExpectedFailuresAreSaid() {
    assertEquals(
        "fewer than 5 failures expected in a group: the p value is rough",
        TestNotes.ofExpected(test(6, 40)));
    assertNull(TestNotes.ofExpected(test(40, 40)));
  }

  @Test
  void notesThatThereAreAreJoined() {
    assertEquals("a; b", TestNotes.joined("a", null, "b"));
    assertNull(TestNotes.joined(null, null));
  }
}
