package pondtally.reports.fixlist;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.TablesFixture;

class FixListTest {

  @Test
  void writes(@TempDir Path folder) throws Exception {
    Path file = Path.of("target/fix-list.xlsx");
    FixList.write(TablesFixture.open(folder, 120), file);
    assertTrue(Files.size(file) > 5_000);
  }
}
