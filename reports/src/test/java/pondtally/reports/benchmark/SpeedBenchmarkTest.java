package pondtally.reports.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long a run takes, side by side with a script for R that does only the core of the job; in
 * turn, medians. Nothing here passes or fails by time. Run {@code mvn -DskipTests package} first,
 * then {@code mvn -Pbenchmark -pl reports -am test -Dtest=SpeedBenchmarkTest}; {@code
 * -Dbenchmark.large=true} adds a million devices, {@code -Dbenchmark.runs=5} more runs.
 */
@Tag("benchmark")
class SpeedBenchmarkTest {

  private static final Path JAR = Path.of("target", "pondtally.jar").toAbsolutePath();
  private static final Path CLASSES = Path.of("..", "jobs", "target", "test-classes");
  private static final int RUNS = Integer.getInteger("benchmark.runs", 3);

  @TempDir private Path folder;

  @Test
  void sampleAsAWhole() throws Exception {
    List<Measured> runs = new ArrayList<>();
    for (int i = 0; i <= RUNS; i++) {
      runs.add(report(Path.of("..", "sample-data"), false));
    }
    print("sample, first run", List.of(runs.get(0)));
    print("sample, later runs", runs.subList(1, runs.size()));
  }

  @Test
  void againstThePeer() throws Exception {
    List<Integer> sizes = new ArrayList<>(List.of(10_000, 100_000));
    if (Boolean.getBoolean("benchmark.large")) {
      sizes.add(1_000_000);
    }
    double before = 0;
    for (int devices : sizes) {
      Path plain = program(devices, 32, "plain");
      Path full = program(devices, 32, "full");
      List<Measured> ours = new ArrayList<>();
      List<Measured> ofFull = new ArrayList<>();
      List<Measured> peers = new ArrayList<>();
      for (int i = 0; i < RUNS; i++) {
        ours.add(report(plain, true));
        ofFull.add(report(full, true));
        peers.addAll(peer(plain));
      }
      double median = print(devices + " devices, plain", ours);
      print(devices + " devices, full", ofFull);
      if (!peers.isEmpty()) {
        say("  ratio to R: %.2f%n", median / print(devices + " devices, R", peers));
      }
      if (before > 0) {
        say("  growth exponent from a tenth: %.3f%n", Math.log10(median / before));
      }
      before = median;
    }
  }

  @Test
  void resamples() throws Exception {
    Path program = program(100_000, 32, "plain");
    List<Measured> few = new ArrayList<>();
    List<Measured> many = new ArrayList<>();
    for (int i = 0; i < RUNS; i++) {
      few.add(report(resampled(program, 100), true));
      many.add(report(resampled(program, 2000), true));
    }
    double cost = print("2,000 resamples", many) - print("100 resamples", few);
    say("  added by 1,900 resamples: %.1f s%n", cost);
  }

  @Test
  void manySmallFiles() throws Exception {
    Path few = program(50_000, 32, "plain");
    Path many = program(50_000, 2_500, "plain");
    List<Measured> ofFew = new ArrayList<>();
    List<Measured> ofMany = new ArrayList<>();
    for (int i = 0; i < RUNS; i++) {
      ofFew.add(report(few, true));
      ofMany.add(report(many, true));
    }
    double ratio = print("10,000 files", ofMany) / print("128 files", ofFew);
    say("  ratio for the same rows: %.2f%n", ratio);
  }

  private record Measured(double seconds, long peakKib) {}

  private Path program(int devices, int partners, String kind) throws Exception {
    Path out = folder.resolve(kind + devices + "-" + partners);
    List<String> command =
        List.of(
            java(),
            "-cp",
            CLASSES.toString(),
            "pondtally.sample.LargeProgram",
            out.toString(),
            "" + devices,
            "" + partners,
            kind);
    assertEquals(0, new ProcessBuilder(command).inheritIO().start().waitFor());
    return out;
  }

  private static Path resampled(Path program, int resamples) throws IOException {
    Path file = program.resolve("program.yaml");
    String text = Files.readString(file).replaceAll("resamples: .*\n", "");
    Files.writeString(file, text + "resamples: " + resamples + "\n");
    return program;
  }

  private Measured report(Path program, boolean isTablesOnly) throws Exception {
    List<String> command =
        new ArrayList<>(
            List.of(
                java(),
                "-jar",
                JAR.toString(),
                "report",
                program.toString(),
                "--out",
                folder.resolve("out").toString(),
                "--replace"));
    if (isTablesOnly) {
      command.add("--tables-only");
    }
    return measured(command);
  }

  /** Nothing, and a line that says so, where R or its packages are not installed. */
  private List<Measured> peer(Path program) throws Exception {
    Path script = folder.resolve("peer.R");
    try (var in = SpeedBenchmarkTest.class.getResourceAsStream("/benchmark/peer.R")) {
      Files.write(script, in.readAllBytes());
    }
    String packages = "library(data.table); library(survival)";
    try {
      Process check =
          new ProcessBuilder("Rscript", "-e", packages).redirectErrorStream(true).start();
      check.getInputStream().readAllBytes();
      if (check.waitFor() == 0) {
        return List.of(
            measured(
                List.of(
                    "Rscript",
                    script.toString(),
                    program.toString(),
                    folder.resolve("peer").toString())));
      }
    } catch (IOException e) {
      say("  Rscript: %s%n", e.getMessage());
    }
    say("  R with data.table and survival is not there: no comparison%n");
    return List.of();
  }

  /** Wall time, and the largest resident memory among the process and what it starts. */
  private Measured measured(List<String> command) throws Exception {
    long start = System.nanoTime();
    Path log = folder.resolve("log");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    long peak = 0;
    while (process.isAlive()) {
      peak = Math.max(peak, peakKib(process.toHandle()));
      for (ProcessHandle child : process.descendants().toList()) {
        peak = Math.max(peak, peakKib(child));
      }
      Thread.sleep(20);
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    assertEquals(0, process.exitValue(), Files.readString(log));
    return new Measured(seconds, peak);
  }

  private static long peakKib(ProcessHandle process) {
    Path status = Path.of("/proc", "" + process.pid(), "status");
    try {
      for (String line : Files.readAllLines(status, StandardCharsets.ISO_8859_1)) {
        if (line.startsWith("VmHWM:")) {
          return Long.parseLong(line.replaceAll("\\D", ""));
        }
      }
    } catch (IOException e) {
      return 0;
    }
    return 0;
  }

  private static double print(String what, List<Measured> runs) {
    List<Double> seconds = runs.stream().map(Measured::seconds).sorted().toList();
    double median = seconds.get(seconds.size() / 2);
    long peak = runs.stream().mapToLong(Measured::peakKib).max().orElse(0);
    say(
        "%-28s median %7.1f s of %d (%.1f to %.1f), peak memory %d MiB%n",
        what, median, runs.size(), seconds.get(0), seconds.get(seconds.size() - 1), peak >> 10);
    return median;
  }

  private static void say(String format, Object... values) {
    System.out.printf(Locale.ROOT, format, values);
  }

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }
}
