package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;

/** Nothing private in any byte of the public edition, and nothing to be worked out from it. */
class PublicEditionSparkTest {

  private static final Path SAMPLE = Path.of("..", "sample-data");

  @TempDir Path folder;

  @Test
  void noSecretStandsInAnyByte() throws Exception {
    Path program = folder.resolve("program");
    Set<String> secrets = SecretProgram.write(program);
    assertTrue(secrets.size() >= 1000, "secrets: " + secrets.size());
    Path open = folder.resolve("open");
    assertEquals(0, Main.run("report", program.toString(), "--out", open.toString(), "--public"));
    EveryByte search = EveryByte.search(open, secrets);
    assertEquals(Set.of(), search.found());
    System.out.printf("%s secrets, %s bytes searched%n", secrets.size(), search.bytes());

    Path full = folder.resolve("full");
    assertEquals(0, Main.run("report", program.toString(), "--out", full.toString()));
    assertTrue(EveryByte.search(full, secrets).found().size() > 1000, "the search finds secrets");
  }

  @Test
  void noWithheldFigureCanBeWorkedOut() throws Exception {
    Path full = report("full", "--tables-only");
    Path open = report("open", "--tables-only", "--public");
    List<PublicAttack.Cell> cells =
        PublicAttack.on(
            TablePackage.open(full.resolve("tables")), TablePackage.open(open.resolve("tables")));
    assertTrue(cells.size() > 50, "withheld figures: " + cells.size());
    assertEquals(List.of(), cells.stream().filter(PublicAttack.Cell::isDetermined).toList());
    for (PublicAttack.Cell cell : cells) {
      double slack = 1e-5 * Math.max(1, cell.value());
      assertTrue(cell.least() <= cell.value() + slack && cell.most() >= cell.value() - slack);
    }
    System.out.printf("%s withheld figures, none within a fifth%n", cells.size());
  }

  /** The attack is shown to succeed where one group alone is withheld. */
  @Test
  void theAttackFindsAGroupThatIsWithheldAlone() throws Exception {
    TablePackage full = TablePackage.open(report("full", "--tables-only").resolve("tables"));
    Path weak = report("weak", "--tables-only").resolve("tables");
    EditedTables.of(weak, "costs")
        .put("withheld", row -> row.contains("setting") && row.contains("rail"), "build_usd")
        .save();
    List<PublicAttack.Cell> cells = PublicAttack.on(full, TablePackage.open(weak));
    assertEquals(1, cells.stream().filter(PublicAttack.Cell::isDetermined).count());
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
