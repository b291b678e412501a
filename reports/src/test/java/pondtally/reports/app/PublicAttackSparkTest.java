package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.attack.Attack;
import pondtally.reports.attack.HiddenFigure;
import pondtally.reports.fixture.Shown;
import pondtally.reports.table.TablePackage;

/**
 * Nothing that the public edition withholds can be worked out from all that it publishes: no figure
 * of a withheld row within a fifth.
 */
@Tag("reliability")
class PublicAttackSparkTest {

  private static final String RISK = "privacy, worked out";
  private static final Path SAMPLE = Path.of("..", "sample-data");

  @TempDir Path folder;

  @Test
  void nothingOfTheSampleCanBeWorkedOut() throws IOException {
    Shown shown = Shown.risk(RISK);
    int figures = attack(SAMPLE, "sample");
    assertTrue(figures > 3000, "withheld figures: " + figures);
    shown.that("the sample: %,d withheld figures, none within a fifth", figures);
  }

  @Test
  void norOfAProgramWhoseGroupsDiffer() throws IOException {
    programs(1, 1);
  }

  @Test
  @Tag("benchmark")
  void norOfFifteenPrograms() throws IOException {
    programs(1, 15);
  }

  private void programs(int first, int last) throws IOException {
    Shown shown = Shown.risk(RISK);
    long figures = 0;
    for (int seed = first; seed <= last; seed++) {
      Path program = SkewedProgram.write(folder.resolve("program-" + seed), seed);
      figures += attack(program, "report-" + seed);
    }
    shown.that(
        "%s programs with groups of one site and of many: %,d withheld figures, none within a fifth",
        last - first + 1, figures);
  }

  private int attack(Path program, String name) {
    List<HiddenFigure> figures =
        Attack.on(full(program, name), open(program, name), figure -> false);
    assertEquals(
        List.of(),
        figures.stream().filter(HiddenFigure::isDetermined).map(String::valueOf).toList());
    assertEquals(List.of(), figures.stream().filter(figure -> !figure.isWithinLimits()).toList());
    return figures.size();
  }

  /** The attack can succeed: one group of each grouping is withheld, and everything is found. */
  @Test
  void aGroupThatIsWithheldAloneIsFound() throws IOException {
    Path program = SkewedProgram.write(folder.resolve("program"), 3);
    TablePackage full = full(program, "report");
    TablePackage open = open(program, "report");
    Map<String, String> first = new TreeMap<>();
    for (HiddenFigure figure : Attack.on(full, open)) {
      String[] words = figure.name().split("\\|");
      if (words[0].equals("costs") && words[3].equals("all")) {
        first.putIfAbsent(words[1], words[2]);
      }
    }
    assertTrue(first.size() > 2, first.toString());
    Predicate<String> others =
        name -> {
          String[] words = name.split("\\|");
          return !words[1].equals("all") && !words[2].equals(first.get(words[1]));
        };
    Map<String, Integer> found = new TreeMap<>();
    List<String> missed = new ArrayList<>();
    for (HiddenFigure figure : Attack.on(full, open, others)) {
      String[] words = figure.name().split("\\|");
      boolean isSum =
          List.of("devices", "failures", "device_years", "total_usd", "acre_years", "lives")
              .contains(words[4]);
      if (isSum && words[2].equals(first.get(words[1])) && words[3].matches("all|product-limit")) {
        if (figure.isDetermined()) {
          found.merge(words[0], 1, Integer::sum);
        } else {
          missed.add(figure.toString());
        }
      }
    }
    assertEquals(List.of(), missed);
    assertTrue(
        found
            .keySet()
            .containsAll(List.of("costs", "failure_rates", "survival_summary", "wetland")),
        found.toString());
  }

  /** Suppression is switched off for one cell that protects another. */
  @Test
  void oneCellTooManyGivesAnotherAway() throws IOException {
    TablePackage full = full(SAMPLE, "sample");
    TablePackage open = open(SAMPLE, "sample");
    Set<String> shown =
        Set.of("costs|pipe|unknown|all|build_usd", "failure_rates|pipe|unknown|all|device_years");
    Set<String> given =
        shown.stream()
            .map(name -> name.replace("|unknown|", "|dual 15 in|"))
            .collect(Collectors.toSet());
    List<HiddenFigure> found =
        Attack.on(full, open, shown::contains).stream()
            .filter(figure -> given.contains(figure.name()))
            .toList();
    assertEquals(2, found.size());
    for (HiddenFigure figure : found) {
      assertTrue(figure.isDetermined(), figure.toString());
      assertEquals(figure.value(), figure.least(), 1e-6 * figure.value());
    }
  }

  /** A figure that one table withholds and another shows under another name. */
  @Test
  void aTableThatRepeatsAnotherGivesItAway() throws IOException {
    Path program = SkewedProgram.write(folder.resolve("program"), 4);
    TablePackage full = full(program, "report");
    TablePackage open = open(program, "report");
    Predicate<String> costs = name -> name.startsWith("costs|") && name.endsWith("|all|devices");
    long before = found(Attack.on(full, open), "failure_rates");
    long after = found(Attack.on(full, open, costs), "failure_rates");
    assertEquals(0, before);
    assertTrue(after > 2, "found: " + after);
  }

  private static long found(List<HiddenFigure> figures, String table) {
    return figures.stream()
        .filter(figure -> figure.name().startsWith(table + "|"))
        .filter(figure -> figure.name().endsWith("|all|devices"))
        .filter(HiddenFigure::isDetermined)
        .count();
  }

  private TablePackage full(Path program, String name) {
    return report(program, name + "-full", "--tables-only");
  }

  private TablePackage open(Path program, String name) {
    return report(program, name + "-open", "--tables-only", "--public");
  }

  private TablePackage report(Path program, String name, String... options) {
    Path out = folder.resolve(name);
    String[] arguments =
        Stream.concat(
                Stream.of("report", program.toString(), "--out", out.toString()),
                Stream.of(options))
            .toArray(String[]::new);
    assertEquals(0, Main.run(arguments));
    return TablePackage.open(out.resolve("tables"));
  }
}
