package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CountedLivesTest {
  @Test
  void countsByHand() {
    CountedLives lives =
        CountedLives.ofKinds(2)
            .add(0, 10, 1)
            .add(0, 10, CountedLives.CENSORED)
            .add(5, 20, 2, 3)
            .add(10, 30, 0);
    assertEquals(6, lives.lives());
    assertEquals(4, lives.events());
    assertEquals(1, lives.events(1));
    assertEquals(3, lives.events(2));
    assertEquals(2, lives.censored());
    assertEquals(10 + 10 + 3 * 15 + 20, lives.timeAtRisk());
    RiskTable table = lives.anyEvent();
    assertEquals(3, table.rows());
    // Entered before 10: two at 0 and three at 5; the one that enters at 10 is not yet at risk.
    assertEquals(5, table.atRisk(0));
    assertEquals(4, table.atRisk(1));
    assertEquals(1, table.atRisk(2));
    assertEquals(0, table.atRiskAt(0));
    assertEquals(2, table.atRiskAt(5));
    assertEquals(5, table.atRiskAt(5.5));
    assertEquals(4, table.atRiskAt(11));
    assertEquals(0, table.atRiskAt(30.5));
  }

  @Test
  void otherKindsAreCensored() {
    CountedLives lives = CountedLives.ofKinds(3).add(0, 4, 1).add(0, 4, 2).add(0, 6, 3);
    RiskTable table = lives.eventsOf(1, 3);
    assertEquals(1, table.events(0));
    assertEquals(1, table.censored(0));
    assertEquals(1, table.events(1));
    assertEquals(2, table.events());
  }

  @Test
  void noLives() {
    CountedLives lives = CountedLives.ofOneKind();
    assertEquals(0, lives.lives());
    assertEquals(0, lives.timeAtRisk());
    assertEquals(0, lives.anyEvent().rows());
    assertEquals(0, lives.anyEvent().atRiskAt(3));
    assertEquals(0, RiskTable.empty().lives());
  }

  @Test
  void lifeWithoutFollowUpIsNeverAtRisk() {
    CountedLives lives = CountedLives.ofOneKind().add(7, 7, 0).add(0, 7, 1);
    assertEquals(1, lives.livesWithoutFollowUp());
    assertEquals(1, lives.lives());
    assertEquals(1, lives.anyEvent().atRisk(0));
  }

  @Test
  void refusesWhatIsNoFollowUp() {
    CountedLives lives = CountedLives.ofOneKind();
    assertThrows(IllegalArgumentException.class, () -> lives.add(-1, 3, 0));
    assertThrows(IllegalArgumentException.class, () -> lives.add(4, 3, 0));
    assertThrows(IllegalArgumentException.class, () -> lives.add(0, Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> lives.add(Double.NaN, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> lives.add(0, Double.POSITIVE_INFINITY, 0));
    assertThrows(IllegalArgumentException.class, () -> lives.add(0, 1, 2));
    assertThrows(IllegalArgumentException.class, () -> lives.add(0, 1, 1, -1));
    assertThrows(IllegalArgumentException.class, () -> lives.add(3, 3, 1));
    assertThrows(IllegalArgumentException.class, () -> lives.merge(CountedLives.ofKinds(2)));
    assertThrows(IllegalArgumentException.class, () -> CountedLives.ofKinds(0));
    assertEquals(0, lives.lives());
  }

  @Test
  void zeroAndMinusZeroAreOneTime() {
    CountedLives lives = CountedLives.ofOneKind().add(0.0, 1, 1).add(-0.0, 1, 0);
    assertEquals(2, lives.anyEvent().atRisk(0));
    assertEquals(0, lives.anyEvent().atRiskAt(0));
  }

  @Test
  void orderOfAddingAndMergingNeverMatters() throws Exception {
    Random random = new Random(20250301);
    double[][] rows = new double[5000][];
    for (int i = 0; i < rows.length; i++) {
      double entry = random.nextInt(4) == 0 ? random.nextInt(2000) / 2.0 : 0;
      double exit =
          entry + (random.nextBoolean() ? 0.5 + random.nextInt(4000) / 2.0 : random.nextDouble());
      rows[i] = new double[] {entry, exit, random.nextInt(4)};
    }
    CountedLives straight = CountedLives.ofKinds(3);
    CountedLives[] parts = new CountedLives[7];
    Arrays.setAll(parts, i -> CountedLives.ofKinds(3));
    for (int i = 0; i < rows.length; i++) {
      add(straight, rows[i]);
      add(parts[random.nextInt(7)], rows[rows.length - 1 - i]);
    }
    CountedLives merged = CountedLives.ofKinds(3);
    for (CountedLives part : parts) {
      merged.merge(serialized(part));
    }
    assertEquals(5000, merged.lives());
    assertArrayEquals(bytes(straight), bytes(merged));
    assertSame(straight.anyEvent(), merged.anyEvent());
    assertSame(straight.eventsOf(2), serialized(merged).eventsOf(2));
    assertEquals(straight.timeAtRisk(), merged.timeAtRisk());
  }

  private static void add(CountedLives lives, double[] row) {
    lives.add(row[0], row[1], (int) row[2]);
  }

  private static void assertSame(RiskTable a, RiskTable b) {
    assertEquals(a.rows(), b.rows());
    for (int i = 0; i < a.rows(); i++) {
      assertEquals(a.time(i), b.time(i));
      assertEquals(a.atRisk(i), b.atRisk(i));
      assertEquals(a.events(i), b.events(i));
      assertEquals(a.censored(i), b.censored(i));
    }
  }

  private static byte[] bytes(Object object) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(object);
    }
    return bytes.toByteArray();
  }

  private static CountedLives serialized(CountedLives lives) throws Exception {
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes(lives)))) {
      return (CountedLives) in.readObject();
    }
  }
}
