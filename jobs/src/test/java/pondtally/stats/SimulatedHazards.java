package pondtally.stats;

import java.util.List;
import java.util.SplittableRandom;

/** Lives of three pipe types in two strata, drawn at random. */
final class SimulatedHazards {

  static final HazardDesign PIPE = HazardDesign.empty().withFactor("pipe", "A", List.of("B", "C"));

  private SimulatedHazards() {}

  static HazardPatterns of(long seed, int lives, boolean wholeDays) {
    SplittableRandom random = new SplittableRandom(seed);
    HazardPatterns patterns = HazardPatterns.ofColumns(2);
    for (int i = 0; i < lives; i++) {
      Object level = List.of("A", "B", "C").get(random.nextInt(3));
      double[] x = PIPE.encode(level);
      double life = -100 * Math.log(random.nextDouble()) / Math.exp(0.7 * x[0] - 0.4 * x[1]);
      double entry = random.nextInt(3) == 0 ? random.nextDouble() * 40 : 0;
      double end = entry + 1 + random.nextDouble() * 120;
      if (life > entry) {
        double exit = Math.min(life, end);
        exit = wholeDays ? Math.ceil(exit / 10) * 10 : exit;
        patterns.add(
            "w" + random.nextInt(2),
            x,
            Math.floor(entry),
            Math.max(exit, Math.floor(entry) + 1),
            life <= end,
            1);
      }
    }
    return patterns;
  }
}
