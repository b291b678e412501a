package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.table.ResultPackage;

/**
 * The same records give the same figures, to the last digit: run again and in other languages, with
 * rows in another order, files split and renamed, partners' folders renamed. Tables that speak of
 * places in files differ then, and are left out.
 *
 * <p>The folder is the sample without most of one partner's workbooks, and without rows that
 * contradict another file's: there, by rule, the first in file order is used.
 */
class SameFiguresSparkTest {

  /** Tables that name files and rows. */
  private static final Set<String> OF_PLACES =
      Set.of("row_account.csv", "data_issues.csv", "source_rows.csv", "datapackage.json");

  private static final Set<String> WORKBOOKS =
      Set.of("brackwen-records.xlsx", "lowmarrow-to-2022.xlsx", "tessarby-register.xlsx");

  /** Rows that contradict a row of another file (see the sample's list of planted faults). */
  private static final Map<String, Set<Integer>> CONTRADICTIONS =
      Map.of(
          "lowmarrow/installs-2023-2025.csv", Set.of(9),
          "lowmarrow/removals.csv", Set.of(7),
          "orrenby-roads/installs.csv", Set.of(2),
          "orrenby-roads/removals.csv", Set.of(6, 98, 111));

  @TempDir private static Path base;

  @TempDir private Path changed;

  private static SortedMap<String, String> figures;

  @BeforeAll
  static void runOnce() throws IOException {
    copy(SampleRun.SAMPLE.resolve("program.yaml"), base.resolve("program.yaml"));
    for (Path file : files(SampleRun.SAMPLE)) {
      String name = SampleRun.SAMPLE.relativize(file).toString();
      if (WORKBOOKS.contains(file.getFileName().toString())) {
        copy(file, base.resolve(name));
      } else if (name.endsWith(".csv")) {
        Files.createDirectories(base.resolve(name).getParent());
        FolderOfRows.write(base.resolve(name), without(file, CONTRADICTIONS.get(name)));
      }
    }
    figures = run(base, Locale.ROOT);
    assertTrue(figures.size() > 15, figures.keySet().toString());
    assertTrue(figures.get("devices.csv").lines().count() > 200);
  }

  private static List<List<String>> without(Path file, Set<Integer> rows) throws IOException {
    List<List<String>> kept = new ArrayList<>();
    List<List<String>> all = FolderOfRows.rows(file);
    for (int i = 0; i < all.size(); i++) {
      if (rows == null || !rows.contains(i + 1)) {
        kept.add(all.get(i));
      }
    }
    return kept;
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to.getParent());
    Files.copy(from, to);
  }

  /** Every written file of a run under that default language, by name. */
  private static SortedMap<String, String> run(Path folder, Locale language) throws IOException {
    Locale before = Locale.getDefault();
    Path out = Files.createTempDirectory("pondtally-same");
    try {
      Locale.setDefault(language);
      JobResult result = SampleRun.of(folder);
      ResultPackage.write(out, result.tables(), result.facts());
      SortedMap<String, String> texts = new TreeMap<>();
      for (Path file : files(out)) {
        texts.put(file.getFileName().toString(), Files.readString(file, StandardCharsets.UTF_8));
        Files.delete(file);
      }
      return texts;
    } finally {
      Locale.setDefault(before);
      Files.delete(out);
    }
  }

  /** Writes the folder anew, CSV files changed by {@code change}; other files as they are. */
  private void change(Change change) throws IOException {
    for (Path file : files(base)) {
      Path to = changed.resolve(base.relativize(file).toString());
      Files.createDirectories(to.getParent());
      if (file.toString().endsWith(".csv")) {
        change.write(to, FolderOfRows.rows(file));
      } else {
        Files.copy(file, to);
      }
    }
  }

  /** How a CSV file is written otherwise. */
  private interface Change {
    void write(Path file, List<List<String>> rows) throws IOException;
  }

  private static void sameFigures(SortedMap<String, String> actual) {
    assertEquals(figures.keySet(), actual.keySet());
    figures.forEach(
        (name, text) -> {
          if (!OF_PLACES.contains(name)) {
            sameLines(name, text, actual.get(name));
          }
        });
  }

  private static void sameLines(String name, String expected, String actual) {
    List<String> was = expected.lines().toList();
    List<String> is = actual.lines().toList();
    List<String> missing = new ArrayList<>(was);
    missing.removeAll(Set.copyOf(is));
    List<String> added = new ArrayList<>(is);
    added.removeAll(Set.copyOf(was));
    assertEquals(
        List.of(),
        missing.stream().limit(5).toList(),
        () -> name + " has instead " + added.stream().limit(5).toList());
    assertEquals(expected, actual, name + " has the same lines, in another order");
  }

  @Test
  void againAndInOtherLanguagesByteForByte() throws IOException {
    for (String language : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
      SortedMap<String, String> again = run(base, Locale.forLanguageTag(language));
      figures.forEach((name, text) -> assertEquals(text, again.get(name), language + " " + name));
    }
  }

  @Test
  void rowsInAnotherOrder() throws IOException {
    change(
        (file, rows) -> {
          List<List<String>> reversed = new ArrayList<>(rows.subList(1, rows.size()));
          Collections.reverse(reversed);
          reversed.add(0, rows.get(0));
          FolderOfRows.write(file, reversed);
        });
    sameFigures(run(changed, Locale.ROOT));
  }

  @Test
  void filesSplitAndRenamed() throws IOException {
    List<Path> split = new ArrayList<>();
    change(
        (file, rows) -> {
          String name = file.getFileName().toString().replace(".csv", "");
          if (decidedByItsColumn(rows)) {
            FolderOfRows.write(file.resolveSibling(name + "-whole.csv"), rows);
            return;
          }
          split.add(file);
          int half = (rows.size() + 1) / 2;
          List<List<String>> second = new ArrayList<>(rows.subList(half, rows.size()));
          second.add(0, rows.get(0));
          FolderOfRows.write(file.resolveSibling(name + "-a.csv"), second);
          FolderOfRows.write(file.resolveSibling(name + "-b.csv"), rows.subList(0, half));
        });
    assertTrue(split.size() > 15, split.toString());
    sameFigures(run(changed, Locale.ROOT));
  }

  /** Dates such as 03/04/2024 are read as the rest of their column in the file is written. */
  private static boolean decidedByItsColumn(List<List<String>> rows) {
    return rows.stream()
        .flatMap(List::stream)
        .anyMatch(cell -> cell.matches("\\d{1,2}/\\d{1,2}/\\d{2,4}"));
  }

  @Test
  void partnersFoldersRenamedSoThatTheirOrderTurns() throws IOException {
    Map<String, String> names =
        Map.of(
            "brackwen-farms", "zz-five",
            "lowmarrow", "zy-four",
            "orrenby-roads", "m-three",
            "quarrindale", "b-two",
            "tessarby-valley", "a-one");
    for (Path file : files(base)) {
      String name = base.relativize(file).toString();
      String partner = name.contains("/") ? name.substring(0, name.indexOf('/')) : "";
      copy(
          file,
          changed.resolve(partner.isEmpty() ? name : name.replace(partner, names.get(partner))));
    }
    SortedMap<String, String> renamed = run(changed, Locale.ROOT);
    assertFalse(renamed.get("devices.csv").contains(",brackwen-farms,"));
    SortedMap<String, String> back = new TreeMap<>();
    renamed.forEach((name, text) -> back.put(name, named(text, names)));
    // Rows by partner come in the order of the partners' names.
    sameLines(
        "completeness.csv",
        sorted(figures.get("completeness.csv")),
        sorted(back.get("completeness.csv")));
    back.put("completeness.csv", figures.get("completeness.csv"));
    sameFigures(back);
  }

  private static String named(String text, Map<String, String> names) {
    String named = text;
    for (Map.Entry<String, String> name : names.entrySet()) {
      named = named.replaceAll("(?m)(^|,)" + name.getValue() + ",", "$1" + name.getKey() + ",");
    }
    return named;
  }

  private static String sorted(String text) {
    return String.join("\n", text.lines().sorted().toList());
  }
}
