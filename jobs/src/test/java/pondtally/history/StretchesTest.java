package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Stretches of time, against a set of single half days. */
class StretchesTest {

  private static Stretches random(Random random, BitSet bits) {
    List<Stretch> list = new ArrayList<>();
    for (int i = random.nextInt(6); i > 0; i--) {
      int from = random.nextInt(60);
      int to = from + 1 + random.nextInt(12);
      list.add(new Stretch(from, to));
      bits.set(from, to);
    }
    return Stretches.of(list);
  }

  private static BitSet bits(Stretches time) {
    BitSet bits = new BitSet();
    for (Stretch stretch : time.list()) {
      bits.set(stretch.from(), stretch.to());
    }
    return bits;
  }

  @Test
  void unionIntersectionAndDifferenceAreThoseOfSets() {
    Random random = new Random(11);
    for (int run = 0; run < 2000; run++) {
      BitSet a = new BitSet();
      BitSet b = new BitSet();
      Stretches x = random(random, a);
      Stretches y = random(random, b);
      BitSet or = (BitSet) a.clone();
      or.or(b);
      BitSet and = (BitSet) a.clone();
      and.and(b);
      BitSet andNot = (BitSet) a.clone();
      andNot.andNot(b);
      assertEquals(a, bits(x));
      assertEquals(or, bits(x.union(y)));
      assertEquals(and, bits(x.intersect(y)));
      assertEquals(andNot, bits(x.minus(y)));
      assertEquals(or.cardinality(), x.union(y).halfDays());
      assertApart(x.union(y));
      assertApart(x.minus(y));
    }
  }

  private static void assertApart(Stretches time) {
    for (int i = 1; i < time.list().size(); i++) {
      assertTrue(time.list().get(i - 1).to() < time.list().get(i).from(), time.toString());
    }
  }

  @Test
  void touchingStretchesAreOne() {
    assertEquals(
        Stretches.between(2, 8), Stretches.of(List.of(new Stretch(5, 8), new Stretch(2, 5))));
  }

  @Test
  void aPartAndItsRestMakeTheWhole() {
    Stretches time = Stretches.of(List.of(new Stretch(0, 10), new Stretch(20, 31)));
    assertEquals(10.5, time.days());
    assertEquals(
        time.within(5, 25), time.minus(Stretches.between(0, 5)).minus(Stretches.between(25, 40)));
  }

  @Test
  void anEmptyStretchIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Stretch(4, 4));
    assertTrue(Stretches.between(4, 4).isEmpty());
    assertTrue(Stretches.between(5, 4).isEmpty());
  }
}
