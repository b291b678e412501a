package pondtally.reports.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.RunFolder;

/** Two packages of tables that differ in what each test changes, and in nothing else. */
class ComparisonTest {

  @TempDir private Path folder;

  private Path run(String name, Map<String, String> facts, String inputs) throws IOException {
    Path run = Files.createDirectories(folder.resolve(name));
    TablesFixture.open(run.resolve("tables"), 20, facts);
    Files.writeString(run.resolve("run.json"), "{\"inputs\":[" + inputs + "]}");
    return run;
  }

  private static String input(String file, String sha256) {
    return "{\"file\":\"%s\",\"sha256\":\"%s\"}".formatted(file, sha256);
  }

  private Comparison compared() {
    return Comparison.of(RunFolder.open(folder.resolve("a")), RunFolder.open(folder.resolve("b")));
  }

  @Test
  void equalRunsDifferInNothing() throws IOException {
    run("a", Map.of(), input("x.csv", "1"));
    run("b", Map.of(), input("x.csv", "1"));
    Comparison comparison = compared();
    assertEquals(List.of(), comparison.figures());
    assertEquals(List.of(), comparison.settings());
    assertEquals(List.of(), comparison.files());
    assertEquals(List.of(), comparison.rows());
    assertEquals(List.of(), comparison.records());
    assertTrue(comparison.compared() > 100);
  }

  /** 1,000 before and 1,250 after: up 250, a quarter. */
  @Test
  void aFigureMovesWithItsDifferenceAndCause() throws IOException {
    Path a = run("a", Map.of("base_year", "2022"), "");
    Path b = run("b", Map.of("base_year", "2024"), "");
    put(a, "1000");
    put(b, "1250");
    Comparison comparison = compared();
    assertEquals(1, comparison.figures().size());
    FigureChange change = comparison.figures().get(0);
    assertEquals("total_usd", change.column());
    assertEquals(1000, change.before());
    assertEquals(1250, change.after());
    assertEquals(250, change.difference());
    assertEquals(0.25, change.relative());
    assertEquals("price-base", change.sources());
    assertTrue(change.why().contains("dollars of 2022 before, of 2024 now"), change.why());
    assertEquals("base_year", comparison.settings().get(0).setting());
  }

  private static void put(Path run, String usd) throws IOException {
    EditedTables.of(run.resolve("tables"), "costs")
        .put(usd, record -> record.get(0).equals("all") && record.get(2).equals("all"), "total_usd")
        .save();
  }

  /** The same figure with no difference in what went in. */
  @Test
  void whatNothingExplainsIsSaidSo() throws IOException {
    Path a = run("a", Map.of(), "");
    run("b", Map.of(), "");
    put(a, "1000");
    assertEquals("unexplained", compared().figures().get(0).sources());
  }

  /** The last bits of an addition in another order are no change. */
  @Test
  void lastBitsAreNoChange() throws IOException {
    Path a = run("a", Map.of(), "");
    Path b = run("b", Map.of(), "");
    put(a, "0.30000000000000004");
    put(b, "0.3");
    assertEquals(List.of(), compared().figures());
  }

  /** A price base moves dollars, not counts of devices. */
  @Test
  void aSettingIsNoCauseOfWhatItCannotMove() throws IOException {
    Path a = run("a", Map.of("base_year", "2022"), "");
    run("b", Map.of("base_year", "2024"), "");
    EditedTables.of(a.resolve("tables"), "costs")
        .put("3", record -> record.get(0).equals("all") && record.get(2).equals("all"), "devices")
        .save();
    FigureChange change = compared().figures().get(0);
    assertEquals("devices", change.column());
    assertEquals("unexplained", change.sources());
  }

  @Test
  void filesRowsAndRecordsThatDiffer() throws IOException {
    Path a = run("a", Map.of(), input("x.csv", "1") + "," + input("gone.csv", "2"));
    run("b", Map.of(), input("x.csv", "9") + "," + input("new.csv", "3"));
    EditedTables.of(a.resolve("tables"), "row_account")
        .put("1", record -> record.get(3).equals("installs"), "rows_read", "used")
        .save();
    EditedTables.of(a.resolve("tables"), "devices")
        .put("failed", record -> record.get(9).equals("working"), "state")
        .save();
    Comparison comparison = compared();
    assertEquals(
        List.of("gone.csv gone", "new.csv new", "x.csv changed"),
        comparison.files().stream().map(f -> f.file() + " " + f.kind()).toList());
    assertFalse(comparison.rows().isEmpty());
    assertTrue(
        comparison.rows().stream().allMatch(row -> row.kind().equals(RowChange.NEW_ROWS)),
        comparison.rows().toString());
    assertFalse(comparison.records().isEmpty());
    RecordChange record = comparison.records().get(0);
    assertEquals("changed", record.kind());
    assertEquals("state", record.columns());
    assertEquals("state: failed \u2192 working", record.what());
  }
}
