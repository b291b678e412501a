package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

/** How long a workbook of 5,000 devices takes to write, and how much memory. */
@Tag("benchmark")
class WorkbookBenchmarkTest {

  private static final int DEVICES = 5_000;
  private static final int RUNS = 5;

  @TempDir private Path folder;

  @Test
  void fiveThousandDevices() throws Exception {
    TablesFixture.open(folder.resolve("tables"), DEVICES);
    Path file = folder.resolve("program.xlsx");
    List<Double> seconds = new ArrayList<>();
    heap().forEach(MemoryPoolMXBean::resetPeakUsage);
    for (int i = 0; i < RUNS; i++) {
      long start = System.nanoTime();
      TablePackage tables = TablePackage.open(folder.resolve("tables"));
      ProgramWorkbook.write(tables, file);
      seconds.add((System.nanoTime() - start) / 1e9);
    }
    double megabytes = heap().stream().mapToLong(p -> p.getPeakUsage().getUsed()).sum() / 1e6;
    List<Double> sorted = new ArrayList<>(seconds);
    Collections.sort(sorted);
    System.out.printf(
        Locale.ROOT,
        "workbook of %d devices: first %.1f s, median of %d %.1f s, heap at most %.0f MB%n",
        DEVICES,
        seconds.get(0),
        RUNS,
        sorted.get(RUNS / 2),
        megabytes);
    assertEquals(DEVICES, lines(file));
  }

  private static List<MemoryPoolMXBean> heap() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .toList();
  }

  private static int lines(Path file) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(file.toString())) {
      return book.getSheet("Devices").getTables().get(0).getRowCount() - 1;
    }
  }
}
