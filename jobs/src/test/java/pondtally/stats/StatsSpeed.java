package pondtally.stats;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.LongSupplier;

/** Measures the counting parts by hand; not a test. Medians of seven runs after two to warm up. */
final class StatsSpeed {
  private static final int LIVES = 1_000_000;

  private StatsSpeed() {}

  public static void main(String[] args) {
    CountedLives counted = counted();
    report("1,000,000 lives added by half day", StatsSpeed::addLives);
    report(
        "curve with limits from counted half days, " + counted.anyEvent().rows() + " rows",
        () -> limits(counted));
    report(
        "incidence of one of 3 kinds from the same",
        () -> CumulativeIncidence.of(counted, 1).rows());
    report("log-rank, 20 groups with such rows each", () -> logRank(counted));
    report("100,000,000 Poisson weights (100,000 clusters, 1,000 resamples)", StatsSpeed::weights);
    report("3 measures of 20,000 clusters in 1,000 resamples", StatsSpeed::resamples);
    report("10,000,000 doubles in an exact sum", StatsSpeed::exactSum);
    report("repeat failures of 200,000 devices, both passes", StatsSpeed::repeat);
  }

  private static void report(String what, LongSupplier work) {
    long[] took = new long[7];
    long check = work.getAsLong() + work.getAsLong();
    for (int i = 0; i < took.length; i++) {
      long start = System.nanoTime();
      check += work.getAsLong();
      took[i] = System.nanoTime() - start;
    }
    Arrays.sort(took);
    System.out.printf(Locale.ROOT, "%-70s %9.1f ms  (%d)%n", what, took[3] / 1e6, check);
  }

  private static CountedLives counted() {
    CountedLives lives = CountedLives.ofKinds(3);
    Random random = new Random(1);
    for (int i = 0; i < LIVES; i++) {
      double entry = random.nextInt(10) == 0 ? random.nextInt(2000) / 2.0 : 0;
      lives.add(entry, entry + (1 + random.nextInt(7300)) / 2.0, random.nextInt(4));
    }
    return lives;
  }

  private static long addLives() {
    CountedLives lives = CountedLives.ofKinds(3);
    long state = 1;
    for (int i = 0; i < LIVES; i++) {
      state = state * 6364136223846793005L + 1442695040888963407L;
      lives.add(0, (1 + (state >>> 40) % 7300) / 2.0, (int) (state >>> 62));
    }
    return lives.lives();
  }

  private static long limits(CountedLives counted) {
    SurvivalCurve curve = SurvivalCurve.of(counted.anyEvent());
    double sum = 0;
    for (int row = 0; row < curve.rows(); row++) {
      sum += curve.limits(row).lower().orElse(0) + curve.stdError(row).orElse(0);
    }
    return (long) (sum + curve.quantile(0.5).orElse(0));
  }

  private static long logRank(CountedLives counted) {
    RiskTable[] groups = new RiskTable[20];
    Arrays.setAll(groups, i -> counted.eventsOf(1 + i % 3));
    return (long) LogRank.of(List.of(groups), LogRankWeight.LOG_RANK).chiSquare().getAsDouble();
  }

  private static long weights() {
    byte[] weights = new byte[1000];
    long sum = 0;
    for (int c = 0; c < 100_000; c++) {
      PoissonWeights.of(7, "site " + c).fill(weights);
      sum += weights[c % 1000];
    }
    return sum;
  }

  private static long resamples() {
    ResampleSums sums = ResampleSums.of(7, 3, 1000);
    for (int c = 0; c < 20_000; c++) {
      sums.add("site " + c, c * 1.1, 500.25, 1);
    }
    return (long) sums.total(2, 0);
  }

  private static long exactSum() {
    ExactSum sum = new ExactSum();
    for (int i = 0; i < 10_000_000; i++) {
      sum.add(i * 0.37);
    }
    return (long) sum.result();
  }

  private static long repeat() {
    Random random = new Random(2);
    RepeatHistory[] devices = new RepeatHistory[200_000];
    Arrays.setAll(devices, i -> history(random));
    RepeatCounts counts = new RepeatCounts();
    for (RepeatHistory device : devices) {
      counts.add(device);
    }
    MeanCumulative mean = MeanCumulative.of(counts);
    RepeatSpread spread = mean.spread();
    for (RepeatHistory device : devices) {
      spread.add(List.of(device));
    }
    return (long) (1e9 * spread.variances()[mean.rows() - 1]);
  }

  private static RepeatHistory history(Random random) {
    double exit = 1 + random.nextInt(3650);
    double[] events = new double[random.nextInt(3)];
    Arrays.setAll(events, i -> (1 + random.nextInt(2 * (int) exit)) / 2.0);
    return RepeatHistory.of(0, exit, events);
  }
}
