package pondtally.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.table.TablePackage;

class ChartSetTest {

  @TempDir Path folder;

  @Test
  void view() throws Exception {
    for (var c : List.of("usual", "none", "one", "large")) {
      TestTables t =
          switch (c) {
            case "usual" -> InventedProgram.usual();
            case "none" -> InventedProgram.withoutFailures();
            case "one" -> InventedProgram.oneGroup();
            default -> InventedProgram.large();
          };
      TablePackage p = t.open(folder.resolve(c));
      for (int i = 0; i < 2; i++) {
        long t0 = System.nanoTime();
        List<ChartFile> files = ChartSet.write(p, Path.of("/tmp/charts-view/" + c));
        System.out.println(c + " " + files.size() + " " + (System.nanoTime() - t0) / 1e9);
      }
      assertEquals(1, 1);
    }
  }
}
