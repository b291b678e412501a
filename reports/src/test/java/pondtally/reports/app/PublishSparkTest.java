package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EveryNumber;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Section;
import pondtally.reports.view.Summary;

/** A program that publishes a year, corrects a row of it, and reports again. */
class PublishSparkTest {

  @TempDir private Path folder;

  private Path program(String cost) throws IOException {
    Path program = Files.createDirectories(folder.resolve("program"));
    Path crew = Files.createDirectories(program.resolve("crew"));
    Files.writeString(program.resolve("program.yaml"), "as_of: 2024-12-31\nbase_year: 2023\n");
    Files.writeString(
        crew.resolve("installs.csv"),
        """
        device_id,site_id,installed_on,device_kind,funder,install_cost_usd
        D1,S1,2024-03-01,pond-leveler,River Levy,%s
        D2,S2,2024-04-01,pond-leveler,River Levy,900
        """
            .formatted(cost));
    Files.writeString(crew.resolve("sites.csv"), "site_id,watershed\nS1,99010101\nS2,99010101\n");
    Files.writeString(
        crew.resolve("revisits.csv"),
        "device_id,visited_on,condition\nD1,2024-09-01,working\nD2,2024-09-02,working\n");
    return program;
  }

  private int report(Path program, String out, String... more) {
    List<String> arguments =
        new java.util.ArrayList<>(
            List.of(
                "report",
                program.toString(),
                "--out",
                folder.resolve(out).toString(),
                "--tables-only"));
    arguments.addAll(List.of(more));
    return Main.run(arguments.toArray(String[]::new));
  }

  @Test
  void aCorrectedRowRestatesWhatWasPublished() throws IOException {
    Path program = program("1000");
    assertEquals(0, report(program, "first", "--publish", "2024"));
    Path kept = program.resolve("published/2024");
    assertTrue(Files.isRegularFile(kept.resolve("tables/costs.csv")));
    assertTrue(Files.isRegularFile(kept.resolve("run.json")));
    assertFalse(tables("first").table("restated").isPresent());
    assertEquals(4, report(program, "again", "--publish", "2024"));
    assertTrue(Files.notExists(folder.resolve("again")));

    assertEquals(0, report(program, "same"));
    assertTrue(tables("same").table("restated").orElseThrow().rows().isEmpty());
    assertEquals(
        Files.readString(folder.resolve("first/tables/row_account.csv")),
        Files.readString(folder.resolve("same/tables/row_account.csv")),
        "published figures are no input");

    program("1500");
    assertEquals(0, report(program, "second"));
    TablePackage second = tables("second");
    Row cost =
        second.table("restated").orElseThrow().rows().stream()
            .filter(row -> row.text("table").equals("costs"))
            .filter(row -> row.text("grouping").equals("all"))
            .filter(row -> row.text("row").equals("year=2024"))
            .filter(row -> row.text("column").equals("total_usd"))
            .findFirst()
            .orElseThrow();
    assertEquals("corrected-rows", cost.text("sources"));
    assertTrue(cost.number("difference").orElseThrow() > 0);
    assertTrue(text(second).contains("In 2024, recorded cost, cash and in kind:"), text(second));
    EveryNumber.of(second).sections(Summary.of(second));
    assertTrue(text(second).contains("from corrected rows (installs)"), text(second));
  }

  @Test
  void onlyTheWholeProgramIsPublished() throws IOException {
    Path program = program("1000");
    assertEquals(2, report(program, "out", "--publish", "2024", "--funder", "River Levy"));
    assertEquals(2, report(program, "out", "--publish", "24"));
    assertEquals(2, report(program, "out", "--funder", "River Levi"));
    assertEquals(0, report(program, "out", "--funder", "River Levy"));
    assertEquals("River Levy", tables("out").fact("scope_funder"));
  }

  private TablePackage tables(String out) {
    return TablePackage.open(folder.resolve(out).resolve("tables"));
  }

  private static String text(TablePackage tables) {
    StringBuilder text = new StringBuilder();
    for (Section section : Summary.of(tables)) {
      section.sentences().forEach(sentence -> text.append(sentence.text()).append('\n'));
    }
    return text.toString();
  }
}
