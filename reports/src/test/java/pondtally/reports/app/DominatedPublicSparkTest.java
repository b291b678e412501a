package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.attack.Attack;
import pondtally.reports.attack.HiddenFigure;
import pondtally.reports.fixture.Shown;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Rows;

/** One landowner's site costs more than all others of its watershed together. */
@Tag("reliability")
class DominatedPublicSparkTest {

  private static final int WATERSHEDS = 4;
  private static final int SITES = 7;

  @TempDir Path folder;

  private Path program(int costliest) throws IOException {
    Path crew = Files.createDirectories(folder.resolve("program/crew"));
    Files.writeString(
        folder.resolve("program/program.yaml"), "as_of: 2025-06-30\nbase_year: 2024\n");
    StringBuilder sites = new StringBuilder("site_id,watershed,latitude,longitude\n");
    StringBuilder installs =
        new StringBuilder(
            "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,install_cost_usd\n");
    for (int i = 0; i < WATERSHEDS * SITES; i++) {
      // The last site of the first watershed lies in the square of the second watershed's sites.
      int square = i == SITES - 1 ? 1 : i / SITES;
      sites.append("S%s,9901010%s,44.%s1,-37.41\n".formatted(i, i / SITES, square));
      installs.append(
          "D%s,S%s,2022-05-01,pond-leveler,dual,%s,%s\n"
              .formatted(i, i, 12 + 3 * (i % 2), i == 3 ? costliest : 900 + 10 * i));
    }
    Files.writeString(crew.resolve("sites.csv"), sites);
    Files.writeString(crew.resolve("installs.csv"), installs);
    return folder.resolve("program");
  }

  private TablePackage report(int costliest, String name, String... more) throws IOException {
    Path out = folder.resolve(name);
    List<String> arguments =
        new java.util.ArrayList<>(
            List.of(
                "report", program(costliest).toString(), "--out", out.toString(), "--tables-only"));
    arguments.addAll(List.of(more));
    assertEquals(0, Main.run(arguments.toArray(String[]::new)));
    return TablePackage.open(out.resolve("tables"));
  }

  private static Map<String, String> costs(TablePackage tables) {
    Map<String, String> costs = new TreeMap<>();
    Rows.of(tables, "costs").where("grouping", "watershed").where("year", "all").list().stream()
        .forEach(row -> costs.put(row.text("group"), row.text("total_usd")));
    return costs;
  }

  @Test
  void aSumThatIsOneSitesInTheMainIsWithheldWithAnother() throws IOException {
    Shown shown = Shown.risk("privacy, one site dominates");
    TablePackage open = report(50_000, "open", "--public");
    Map<String, String> costs = costs(open);
    assertEquals(WATERSHEDS, costs.size());
    assertEquals("withheld", costs.get("99010100"));
    // One other watershed is not a fifth of the costly one: two protect it.
    assertEquals(3, costs.values().stream().filter("withheld"::equals).count(), costs.toString());
    List<HiddenFigure> figures = Attack.on(report(50_000, "full"), open);
    assertTrue(figures.size() > 20, "figures: " + figures.size());
    List<String> dollars =
        figures.stream()
            .filter(figure -> figure.name().matches("costs[|]watershed[|]99010100[|]all[|].*_usd"))
            .filter(HiddenFigure::isDetermined)
            .map(String::valueOf)
            .toList();
    shown.that("%s withheld figures; dollars within a fifth: %s", figures.size(), dollars);
    assertEquals(List.of(), dollars);
  }

  @Test
  void sitesThatCostAboutTheSameAreTold() throws IOException {
    assertTrue(
        costs(report(1500, "open", "--public")).values().stream().noneMatch("withheld"::equals));
  }

  @Test
  void aPlaceIsSharedByEnoughSitesOfTheSameWatershed() throws IOException {
    TablePackage open = report(1500, "open", "--public");
    Map<List<String>, Long> shared =
        Rows.of(open, "sites").list().stream()
            .filter(row -> !row.text("latitude").isEmpty())
            .collect(Collectors.groupingBy(place(), Collectors.counting()));
    assertTrue(shared.size() > 2, shared.toString());
    assertTrue(shared.values().stream().allMatch(count -> count >= 5), shared.toString());
  }

  private static Function<Row, List<String>> place() {
    return row ->
        List.of(
            row.text("watershed"),
            row.text("latitude"),
            row.text("longitude"),
            row.text("place_within_degrees"));
  }
}
