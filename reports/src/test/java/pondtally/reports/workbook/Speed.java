package pondtally.reports.workbook;

import java.nio.file.*;
import pondtally.reports.fixture.TablesFixture;

public class Speed {
  public static void main(String[] a) throws Exception {
    Path f = Files.createTempDirectory("speed");
    var t = TablesFixture.open(f.resolve("t"), Integer.parseInt(a[0]));
    for (int i = 0; i < 4; i++) {
      long s = System.nanoTime();
      ProgramWorkbook.write(t, f.resolve("p.xlsx"));
      System.out.printf(
          "%.2f s, %d KB%n", (System.nanoTime() - s) / 1e9, Files.size(f.resolve("p.xlsx")) / 1024);
    }
    if (a.length > 1)
      pondtally.reports.view.Summary.of(t)
          .forEach(
              x -> {
                System.out.println("# " + x.heading());
                x.sentences().forEach(y -> System.out.println(y.text()));
              });
  }
}
