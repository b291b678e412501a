package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.EveryNumber;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.ChangeSentences;
import pondtally.reports.view.Section;
import pondtally.reports.workbook.EveryCell;

/** The command as a user runs it, on two folders of invented tables. */
class CompareCommandTest {

  @TempDir private Path folder;

  private void runs() throws IOException {
    TablesFixture.open(folder.resolve("a"), 20, Map.of("base_year", "2022"));
    TablesFixture.open(folder.resolve("b"), 20);
    EditedTables.of(folder.resolve("a"), "costs")
        .put("1000", record -> record.get(0).equals("all"), "total_usd")
        .save();
    EditedTables.of(folder.resolve("a"), "survival_summary")
        .put("0.5", record -> record.get(0).equals("all"), "survival_5y")
        .save();
  }

  private int compare(String... more) {
    List<String> arguments =
        new java.util.ArrayList<>(
            List.of("compare", folder.resolve("a").toString(), folder.resolve("b").toString()));
    arguments.addAll(List.of(more));
    return Main.run(arguments.toArray(String[]::new));
  }

  @Test
  void writesTablesPageAndWorkbook() throws IOException {
    runs();
    Path out = folder.resolve("out");
    assertEquals(0, compare("--out", out.toString()));
    for (String file : List.of("changes.html", "changes.xlsx", "run.json", "tables/changes.csv")) {
      assertTrue(Files.size(out.resolve(file)) > 0, file);
    }
    assertEquals(4, compare("--out", out.toString()));
    assertEquals(0, compare("--out", out.toString(), "--replace"));
  }

  @Test
  void refusesWhatIsNoRun() throws IOException {
    runs();
    Files.createDirectory(folder.resolve("empty"));
    assertEquals(
        3,
        Main.run(
            "compare",
            folder.resolve("empty").toString(),
            folder.resolve("b").toString(),
            "--out",
            folder.resolve("out").toString()));
    assertEquals(2, Main.run("compare", folder.resolve("a").toString()));
    assertTrue(Files.notExists(folder.resolve("out")));
  }

  /** Every number of every sentence is found again in the cell that it names. */
  @Test
  void sentencesSayWhatTheTablesHold() throws IOException {
    runs();
    assertEquals(0, compare("--out", folder.resolve("out").toString()));
    TablePackage tables = TablePackage.open(folder.resolve("out/tables"));
    List<Section> sections = ChangeSentences.of(tables);
    assertTrue(EveryNumber.of(tables).sections(sections) > 5);
    String main =
        sections.get(1).sentences().stream().map(s -> s.text() + "\n").reduce("", String::concat);
    assertTrue(main.contains("Go 5 years without a failure: 50.0% before"), main);
    assertTrue(main.contains("another price base: dollars of 2022 before, of 2024 now"), main);
  }

  /** So is every number of page and workbook, the differences included. */
  @Test
  void pageAndWorkbookSayWhatTheTablesHold() throws Exception {
    runs();
    Path out = folder.resolve("out");
    assertEquals(0, compare("--out", out.toString()));
    TablePackage tables = TablePackage.open(out.resolve("tables"));
    assertTrue(EveryNumber.of(tables).page(out.resolve("changes.html")) > 5);
    assertTrue(EveryCell.ofChanges(tables, out.resolve("changes.xlsx")) > 5);
  }
}
