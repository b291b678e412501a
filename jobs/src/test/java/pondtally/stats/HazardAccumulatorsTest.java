package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is counted in parts on several machines must cross between them unchanged. */
class HazardAccumulatorsTest {
  @Test
  void countsCrossUnchanged() throws Exception {
    IntervalCounts counts = SimulatedVisits.of(100, 1);
    assertEquals(counts.rows(), copy(counts).rows());
    GrayCounts gray =
        GrayCounts.empty()
            .add("", "A", 3, GrayCounts.End.EVENT, 2)
            .add("", "B", 4, GrayCounts.End.CENSORED, 1);
    assertEquals(GrayTest.of(gray), GrayTest.of(copy(gray)));
  }

  @Test
  void hazardPartsCrossUnchanged() throws Exception {
    HazardDesign design = copy(HazardDesign.empty().withFactor("pipe", "A", List.of("B")));
    HazardPatterns patterns = HazardPatterns.ofColumns(1);
    for (int i = 1; i < 30; i++) {
      patterns.add("", design.encode(i % 3 == 0 ? "A" : "B"), 0, 1 + i * 7 % 13, i % 2 == 0, 1);
    }
    ProportionalHazards fit = ProportionalHazards.fit(copy(patterns), design, HazardTies.EFRON);
    double[] here = new double[1];
    double[] there = new double[1];
    HazardScores scores = fit.scores();
    scores.addTo(here, "", new double[] {1}, 0, 8, true);
    copy(scores).addTo(there, "", new double[] {1}, 0, 8, true);
    assertArrayEquals(here, there);
    HazardClusterSums sums = HazardClusterSums.of(scores).add(here);
    assertArrayEquals(sums.products(), copy(sums).products());
  }

  @SuppressWarnings("unchecked")
  private static <T> T copy(T original) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(original);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return (T) in.readObject();
    }
  }
}
