package pondtally.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Prints how long a hazard model of many devices takes; run by hand, not a test. Arguments:
 * devices, runs.
 */
final class ProportionalHazardsSpeed {
  private ProportionalHazardsSpeed() {}

  public static void main(String[] args) {
    int devices = args.length > 0 ? Integer.parseInt(args[0]) : 1_000_000;
    int runs = args.length > 1 ? Integer.parseInt(args[1]) : 5;
    List<String> levels = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      levels.add("level" + i);
    }
    HazardDesign design =
        HazardDesign.empty()
            .withFactor("pipe", "level0", levels)
            .withFactor("kind", "a", List.of("b", "c"));
    HazardPatterns patterns = HazardPatterns.ofColumns(design.columns().size());
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < devices; i++) {
      int level = random.nextInt(12);
      double[] x = design.encode(levels.get(level), List.of("a", "b", "c").get(random.nextInt(3)));
      double entry = random.nextInt(4) == 0 ? random.nextInt(1000) : 0;
      double life =
          entry + Math.ceil(-4000 * Math.log(1 - random.nextDouble()) / Math.exp(level * 0.08));
      double end = entry + 1 + random.nextInt(5000);
      patterns.add("w" + random.nextInt(8), x, entry, Math.min(life, end), life <= end, 1);
    }
    double[] seconds = new double[runs];
    double[] extras = new double[runs];
    ProportionalHazards fit = null;
    for (int i = 0; i < runs; i++) {
      long start = System.nanoTime();
      fit = ProportionalHazards.fit(patterns, design, HazardTies.EFRON);
      seconds[i] = (System.nanoTime() - start) / 1e9;
      start = System.nanoTime();
      fit.concordance();
      fit.proportionality(HazardTransform.KM);
      extras[i] = (System.nanoTime() - start) / 1e9;
    }
    Arrays.sort(seconds);
    Arrays.sort(extras);
    System.out.printf(
        Locale.ROOT,
        "%d devices, %d patterns, %d failures, %d columns, 8 strata: fit %.2f s (%.2f to %.2f), %d iterations; concordance and proportionality %.2f s%n",
        devices,
        patterns.distinct(),
        fit.failures(),
        design.columns().size(),
        seconds[runs / 2],
        seconds[0],
        seconds[runs - 1],
        fit.iterations(),
        extras[runs / 2]);
  }
}
