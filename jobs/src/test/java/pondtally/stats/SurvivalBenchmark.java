package pondtally.stats;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * How long the survival methods take on large programs, by JMH. Nothing is asserted about time:
 * {@code mvn -Pbenchmark -pl jobs test -Dtest=SurvivalBenchmark} prints a table.
 */
@Tag("benchmark")
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5)
@Measurement(iterations = 9)
@Fork(1)
public class SurvivalBenchmark {

  private static final int DEVICES = 1_000_000;
  private static final int VISITED = 30_000;

  @Test
  void run() throws RunnerException {
    new Runner(
            new OptionsBuilder()
                .include(SurvivalBenchmark.class.getSimpleName())
                .jvmArgs("-Xmx3g")
                .build())
        .run();
  }

  /**
   * A million devices counted by half days of twenty years, three causes, a tenth entering late.
   */
  @State(Scope.Benchmark)
  public static class Counted {
    private final CountedLives lives = CountedLives.ofKinds(3);
    private final GrayCounts gray = GrayCounts.empty();

    @Setup
    public void count() {
      SplittableRandom random = new SplittableRandom(1);
      for (int i = 0; i < DEVICES; i++) {
        double entry = random.nextInt(10) == 0 ? random.nextInt(2000) / 2.0 : 0;
        lives.add(entry, entry + (1 + random.nextInt(7300)) / 2.0, random.nextInt(4));
      }
      for (int i = 0; i < 50_000; i++) {
        gray.add(
            "w" + random.nextInt(8),
            "pipe" + random.nextInt(12),
            1 + random.nextInt(3650),
            GrayCounts.End.values()[random.nextInt(3)],
            1);
      }
    }
  }

  /** Thirty thousand devices seen at visits: about twenty thousand distinct intervals. */
  @State(Scope.Benchmark)
  public static class Visited {
    private final IntervalCounts intervals = SimulatedVisits.of(VISITED, 1, 250);
    private IntervalEstimate estimate;
    private double[] weights;

    @Setup
    public void fit() {
      estimate = IntervalEstimate.of(intervals);
      SplittableRandom random = new SplittableRandom(2);
      weights =
          estimate.rows().stream()
              .mapToDouble(row -> -Math.log(1 - random.nextDouble()) * row.count())
              .toArray();
      System.out.printf("# %s distinct intervals%n", intervals.distinct());
    }
  }

  /** A million devices of twelve levels and three kinds in eight strata, as counted patterns. */
  @State(Scope.Benchmark)
  public static class Compared {
    private static final List<String> LEVELS =
        IntStream.range(0, 12).mapToObj(i -> "level" + i).toList();
    private static final List<String> KINDS = List.of("a", "b", "c");

    private final HazardDesign design =
        HazardDesign.empty()
            .withFactor("pipe", "level0", LEVELS)
            .withFactor("kind", "a", List.of("b", "c"));
    private final HazardPatterns patterns = HazardPatterns.ofColumns(design.columns().size());
    private ProportionalHazards fit;

    @Setup
    public void count() {
      SplittableRandom random = new SplittableRandom(7);
      for (int i = 0; i < DEVICES; i++) {
        int level = random.nextInt(12);
        double[] x = design.encode(LEVELS.get(level), KINDS.get(random.nextInt(3)));
        double entry = random.nextInt(4) == 0 ? random.nextInt(1000) : 0;
        double life =
            entry + Math.ceil(-4000 * Math.log(1 - random.nextDouble()) / Math.exp(level * 0.08));
        double end = entry + 1 + random.nextInt(5000);
        patterns.add("w" + random.nextInt(8), x, entry, Math.min(life, end), life <= end, 1);
      }
      fit = ProportionalHazards.fit(patterns, design, HazardTies.EFRON);
      System.out.printf("# %s patterns, %s failures%n", patterns.distinct(), fit.failures());
    }
  }

  /** The curve with errors, limits and median of a million devices, after counting. */
  @Benchmark
  public double productLimit(Counted counted) {
    SurvivalCurve curve = SurvivalCurve.of(counted.lives.anyEvent());
    double sum = curve.quantile(0.5).orElse(0);
    for (int row = 0; row < curve.rows(); row++) {
      sum += curve.limits(row).lower().orElse(0) + curve.stdError(row).orElse(0);
    }
    return sum;
  }

  /** Incidence of one of three causes from the same counts. */
  @Benchmark
  public int incidence(Counted counted) {
    return CumulativeIncidence.of(counted.lives, 1).rows();
  }

  /** Log-rank test of twenty groups with as many days each. */
  @Benchmark
  public double logRank(Counted counted) {
    RiskTable[] groups = new RiskTable[20];
    Arrays.setAll(groups, i -> counted.lives.eventsOf(1 + i % 3));
    return LogRank.of(List.of(groups), LogRankWeight.LOG_RANK).chiSquare().orElse(0);
  }

  /** Gray's test of twelve groups in eight strata. */
  @Benchmark
  public GrayTest gray(Counted counted) {
    return GrayTest.of(counted.gray);
  }

  /** The estimate of twenty thousand distinct intervals. */
  @Benchmark
  public IntervalEstimate intervalEstimate(Visited visited) {
    return IntervalEstimate.of(visited.intervals);
  }

  /** One resample of it. */
  @Benchmark
  public IntervalEstimate intervalResample(Visited visited) {
    return visited.estimate.reweighted(visited.weights);
  }

  /** The fit with its covariance. */
  @Benchmark
  public ProportionalHazards hazardModel(Compared compared) {
    return ProportionalHazards.fit(compared.patterns, compared.design, HazardTies.EFRON);
  }

  /** Concordance and the test of proportionality of that fit. */
  @Benchmark
  public Object hazardExtras(Compared compared) {
    return List.of(compared.fit.concordance(), compared.fit.proportionality(HazardTransform.KM));
  }
}
