package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.Shown;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;

/** Nothing private in any byte of the public edition, and nothing to be worked out from it. */
@Tag("reliability")
class PublicEditionSparkTest {

  private static final Path SAMPLE = Path.of("..", "sample-data");

  @TempDir Path folder;

  @Test
  void noSecretStandsInAnyByte() throws Exception {
    Shown shown = Shown.risk("privacy, every byte");
    Path program = folder.resolve("program");
    Set<String> secrets = SecretProgram.write(program);
    assertTrue(secrets.size() >= 1000, "secrets: " + secrets.size());
    Path open = folder.resolve("open");
    assertEquals(0, Main.run("report", program.toString(), "--out", open.toString(), "--public"));
    EveryByte search = EveryByte.search(open, secrets);
    assertEquals(Set.of(), search.found());
    Path full = folder.resolve("full");
    assertEquals(0, Main.run("report", program.toString(), "--out", full.toString()));
    assertTrue(EveryByte.search(full, secrets).found().size() > 1000, "the search finds secrets");
    shown.that("%,d secrets, %,d bytes searched, none found", secrets.size(), search.bytes());
  }

  @Test
  void theSameKeyGivesTheSameNamesAndAnotherKeyOthers() throws Exception {
    Path key = folder.resolve("own.key");
    Path first = report("a", "--tables-only", "--public", "--key", key.toString());
    Path second = report("b", "--tables-only", "--public", "--key", key.toString());
    Path other = report("c", "--tables-only", "--public");
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(key)));
    try (Stream<Path> tables = Files.list(first.resolve("tables"))) {
      for (Path table : tables.toList()) {
        Path again = second.resolve("tables").resolve(table.getFileName());
        assertEquals(-1, Files.mismatch(table, again), table.toString());
      }
    }
    assertFalse(sites(first).stream().anyMatch(sites(other)::contains));
  }

  @Test
  void placesAreNeverFinerThanATenthOfADegreeAndSharedBySeveralSites() throws Exception {
    Path open = report("open", "--tables-only", "--public");
    List<Row> placed =
        TablePackage.open(open.resolve("tables")).table("sites").orElseThrow().rows().stream()
            .filter(row -> !row.text("latitude").isEmpty())
            .toList();
    assertTrue(placed.size() > 50);
    for (Row row : placed) {
      assertTrue(row.text("latitude").matches("-?\\d+(\\.\\d)?"), row.text("latitude"));
      assertTrue(row.text("longitude").matches("-?\\d+(\\.\\d)?"), row.text("longitude"));
      long sharing =
          placed.stream()
              .filter(
                  other ->
                      other.text("latitude").equals(row.text("latitude"))
                          && other.text("longitude").equals(row.text("longitude")))
              .count();
      assertTrue(sharing >= 5);
    }
  }

  /** What one edition withholds, the difference of two may tell. */
  @Test
  void twoEditionsThatCouldBeSubtractedAreWarnedOfOrRefused() throws Exception {
    Path program = folder.resolve("program");
    SmallProgram.write(program);
    String said =
        printed(
            0,
            "report",
            program.toString(),
            "--out",
            folder.resolve("open").toString(),
            "--public",
            "--tables-only");
    assertTrue(
        said.contains(
            "Two editions side by side tell what was added or corrected between them: where that is about fewer sites than `groups_below`, hand out the new edition only in place of the old one, or wait for more."),
        said);
    for (String part : List.of("--watershed=99010203", "--funder=x")) {
      printed(
          2,
          "report",
          program.toString(),
          "--out",
          folder.resolve("part").toString(),
          "--public",
          part);
      assertTrue(Files.notExists(folder.resolve("part")), part);
    }
  }

  private static String printed(int code, String... arguments) {
    PrintStream screen = System.out;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      assertEquals(code, Main.run(arguments), String.join(" ", arguments));
    } finally {
      System.setOut(screen);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  @Test
  void aKeyInsideTheOutputIsRefused() {
    Path out = folder.resolve("out");
    String key = out.resolve("k").toString();
    assertEquals(
        2,
        Main.run("report", SAMPLE.toString(), "--out", out.toString(), "--public", "--key", key));
    assertTrue(Files.notExists(out));
  }

  private Path report(String name, String... options) {
    Path out = folder.resolve(name);
    String[] arguments =
        Stream.concat(
                Stream.of("report", SAMPLE.toString(), "--out", out.toString()), Stream.of(options))
            .toArray(String[]::new);
    assertEquals(0, Main.run(arguments));
    return out;
  }

  private static Set<String> sites(Path out) {
    return TablePackage.open(out.resolve("tables")).table("sites").orElseThrow().rows().stream()
        .map(row -> row.text("site_id"))
        .collect(java.util.stream.Collectors.toSet());
  }
}
