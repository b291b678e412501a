package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import pondtally.stats.MeanCumulative;

/**
 * Valve seats of 41 diesel engines (Nelson and Doganaksoy 1989; files and sources: {@code
 * published/curves/README.md}) counted in two passes, each engine a cluster of its own.
 */
class RepeatFailuresPublishedTest {

  private static final Path PUBLISHED = Path.of("src", "test", "resources", "published", "curves");

  private static List<CSVRecord> read(String file) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    String text = Files.readString(PUBLISHED.resolve(file), StandardCharsets.UTF_8);
    try (CSVParser csv = CSVParser.parse(text, format)) {
      return csv.getRecords();
    }
  }

  private static List<RepeatPart> engines() throws IOException {
    Map<String, List<Double>> failures = new TreeMap<>();
    Map<String, Double> ends = new TreeMap<>();
    for (CSVRecord row : read("valve_seat.csv")) {
      double time = Double.parseDouble(row.get("time"));
      List<Double> own = failures.computeIfAbsent(row.get("id"), id -> new ArrayList<>());
      if (row.get("status").equals("1")) {
        own.add(time);
      } else {
        ends.put(row.get("id"), time);
      }
    }
    return ends.entrySet().stream()
        .map(
            end ->
                new RepeatPart(
                    List.of(GroupKey.ALL),
                    0,
                    end.getValue(),
                    failures.get(end.getKey()).stream().mapToDouble(t -> t).toArray()))
        .toList();
  }

  /** The two passes, counted in three parts that are merged. */
  private static RepeatTally tally(List<List<RepeatPart>> clusters) {
    RepeatTally sum = new RepeatTally();
    for (int part = 0; part < 3; part++) {
      RepeatTally tally = new RepeatTally();
      for (int i = part; i < clusters.size(); i += 3) {
        tally.add(clusters.get(i));
      }
      sum.merge(tally);
    }
    return sum;
  }

  private static double[] variances(RepeatTally tally, List<List<RepeatPart>> clusters) {
    RepeatSpreads sum = RepeatSpreads.of(tally);
    for (int part = 0; part < 3; part++) {
      RepeatSpreads spreads = RepeatSpreads.of(tally);
      for (int i = part; i < clusters.size(); i += 3) {
        spreads.add(clusters.get(i));
      }
      sum.merge(spreads);
    }
    return sum.variances(GroupKey.ALL);
  }

  @Test
  void valveSeats() throws IOException {
    List<List<RepeatPart>> clusters = engines().stream().map(List::of).toList();
    RepeatTally tally = tally(clusters);
    MeanCumulative mean = tally.means().get(GroupKey.ALL);
    double[] variances = variances(tally, clusters);
    List<CSVRecord> expected = read("mcf_valve_seat.csv");
    assertEquals(41, tally.clusters(GroupKey.ALL));
    assertEquals(expected.size(), mean.rows());
    for (int i = 0; i < mean.rows(); i++) {
      CSVRecord row = expected.get(i);
      assertEquals(Double.parseDouble(row.get("mcf")), mean.mean(i), 1e-9);
      double variance = Double.parseDouble(row.get("var_lawless_nadeau"));
      assertEquals(variance, variances[i], 1e-9 * variance);
    }
  }

  /** Two engines that always fail together say no more than one. */
  @Test
  void twinsInOneClusterLeaveTheErrorAsItWas() throws IOException {
    List<List<RepeatPart>> single = engines().stream().map(List::of).toList();
    List<List<RepeatPart>> twins = engines().stream().map(e -> List.of(e, e)).toList();
    List<List<RepeatPart>> apart =
        engines().stream().flatMap(e -> List.of(List.of(e), List.of(e)).stream()).toList();
    double[] one = variances(tally(single), single);
    double[] two = variances(tally(twins), twins);
    double[] free = variances(tally(apart), apart);
    for (int i = 0; i < one.length; i++) {
      assertEquals(one[i], two[i], 1e-9 * one[i]);
      assertTrue(free[i] < 0.51 * one[i], "independent twins halve the variance");
    }
  }
}
