package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.TablesFixture;

/** What compare writes of two runs. */
public final class ComparedRuns {

  private ComparedRuns() {}

  /** The folder of a comparison of two runs in which figures, settings and devices differ. */
  public static Path write(Path folder) throws IOException {
    TablesFixture.open(folder.resolve("a"), 20, Map.of("base_year", "2022", "failure", "failed"));
    TablesFixture.open(folder.resolve("b"), 24, Map.of("failure", "failed-or-reduced"));
    EditedTables.of(folder.resolve("a"), "costs")
        .put("1000", record -> record.get(0).equals("all"), "total_usd")
        .save();
    EditedTables.of(folder.resolve("a"), "failure_rates")
        .put("2.5", record -> record.get(0).equals("pipe"), "per_100_device_years")
        .save();
    Path out = folder.resolve("compared");
    int code =
        Main.run(
            "compare",
            folder.resolve("a").toString(),
            folder.resolve("b").toString(),
            "--out",
            out.toString());
    assertEquals(0, code);
    return out;
  }
}
