package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CumulativeIncidenceTest {
  @Test
  void handFractions() {
    // Kind 1 at 1, kind 2 at 2, censored at 3, kind 1 at 4: F1 = 1/4, then 1/4 + 1/2·1/1 = 3/4.
    CountedLives lives =
        CountedLives.ofKinds(2).add(0, 1, 1).add(0, 2, 2).add(0, 3, 0).add(0, 4, 1);
    CumulativeIncidence first = CumulativeIncidence.of(lives, 1);
    CumulativeIncidence second = CumulativeIncidence.of(lives, 2);
    assertEquals(1 / 4.0, first.at(3.5).getAsDouble(), 1e-12);
    assertEquals(3 / 4.0, first.at(4).getAsDouble(), 1e-12);
    assertEquals(1 / 4.0, second.at(4).getAsDouble(), 1e-12);
    // One binomial share of four at time 1: 1/4·3/4/4.
    assertEquals(Math.sqrt(3 / 64.0), first.stdErrorAt(1).getAsDouble(), 1e-12);
    // Without censoring before, F2(2) is one of four as well.
    assertEquals(Math.sqrt(3 / 64.0), second.stdErrorAt(2).getAsDouble(), 1e-12);
    assertEquals(OptionalDouble.empty(), first.at(4.5));
    assertEquals(OptionalDouble.empty(), first.stdErrorAt(4.5));
    assertEquals(Limits.none(), first.limitsAt(4.5));
  }

  @Test
  void oneKindIsOneLessTheSurvivalCurve() {
    Random random = new Random(21);
    CountedLives lives = CountedLives.ofKinds(2);
    for (int i = 0; i < 400; i++) {
      double entry = random.nextInt(15);
      lives.add(entry, entry + 1 + random.nextInt(50), random.nextInt(3));
    }
    CumulativeIncidence both = CumulativeIncidence.of(lives, 1, 2);
    CumulativeIncidence one = CumulativeIncidence.of(lives, 1);
    CumulativeIncidence two = CumulativeIncidence.of(lives, 2);
    SurvivalCurve curve = SurvivalCurve.of(lives.anyEvent());
    for (int i = 0; i < curve.rows(); i++) {
      assertEquals(1 - curve.survival(i), both.incidence(i), 1e-12);
      double error = curve.stdError(i).orElse(0);
      assertEquals(error * error, both.stdError(i) * both.stdError(i), 1e-12);
      assertEquals(both.incidence(i), one.incidence(i) + two.incidence(i), 1e-12);
    }
    assertEquals(curve.lastTimeWithAtRisk(5), both.lastTimeWithAtRisk(5));
  }

  @Test
  void limits() {
    CountedLives lives = CountedLives.ofKinds(2).add(0, 1, 2).add(0, 2, 1).add(0, 3, 0, 8);
    CumulativeIncidence first = CumulativeIncidence.of(lives, 1);
    assertEquals(Limits.of(0, 1 - Math.pow(0.025, 0.1)), first.limits(0));
    assertEquals(Limits.of(0, 0), first.limitsAt(0));
    // F = 1/10 with se √(0.9·0.1/10): F^exp(±z·se/(F ln F)).
    double spread = 1.959963984540054 * Math.sqrt(0.009) / (0.1 * Math.log(10));
    Limits at2 = first.limitsAt(2);
    assertEquals(Math.pow(0.1, Math.exp(spread)), at2.lower().getAsDouble(), 1e-12);
    assertEquals(Math.pow(0.1, Math.exp(-spread)), at2.upper().getAsDouble(), 1e-12);
    CumulativeIncidence certain = CumulativeIncidence.of(CountedLives.ofOneKind().add(0, 1, 1), 1);
    assertEquals(1, certain.incidence(0));
    assertEquals(Limits.none(), certain.limits(0));
  }

  @Test
  void noLivesAndNoKinds() {
    CumulativeIncidence none = CumulativeIncidence.of(CountedLives.ofOneKind(), 1);
    assertEquals(0, none.rows());
    assertEquals(0, none.at(0).getAsDouble());
    assertEquals(OptionalDouble.empty(), none.at(1));
    CountedLives lives = CountedLives.ofOneKind();
    assertThrows(IllegalArgumentException.class, () -> CumulativeIncidence.of(lives));
    assertThrows(IllegalArgumentException.class, () -> CumulativeIncidence.of(lives, 2));
    assertThrows(IllegalArgumentException.class, () -> none.at(-1));
  }

  @Test
  void cuttingLivesInTwoLeavesItUnchanged() {
    Random random = new Random(12);
    CountedLives whole = CountedLives.ofKinds(2);
    CountedLives cut = CountedLives.ofKinds(2);
    for (int i = 0; i < 300; i++) {
      double exit = 2 + random.nextInt(60);
      int outcome = random.nextInt(3);
      double middle = 1 + random.nextInt((int) exit - 1);
      whole.add(0, exit, outcome);
      cut.add(0, middle, 0).add(middle, exit, outcome);
    }
    CumulativeIncidence a = CumulativeIncidence.of(whole, 2);
    CumulativeIncidence b = CumulativeIncidence.of(cut, 2);
    for (int i = 0; i < a.rows(); i++) {
      assertEquals(a.incidence(i), b.at(a.time(i)).getAsDouble());
      assertEquals(a.stdError(i), b.stdErrorAt(a.time(i)).getAsDouble());
    }
  }
}
