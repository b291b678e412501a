package pondtally.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

/** Letters that no font of the machine has are named, each once; others are not. */
class MissingLettersTest {

  @TempDir private Path folder;

  @Test
  void lettersThatNoFontHasAreNamedOnce() throws IOException {
    // Code points of a plane that is set aside for private use: no font is expected to have them.
    String odd = "\uDBFF\uDFFC";
    TablePackage tables =
        TablesFixture.open(folder.resolve("odd"), 10, Map.of("region", "Upper " + odd + odd));
    assertFalse(Lettering.isThere(odd));
    assertEquals(odd, MissingLetters.of(tables));
  }

  @Test
  void namesOfOurOwnScriptHaveAllTheirLetters() throws IOException {
    assertTrue(Lettering.isThere("Åsgård – Źródło"));
    assertEquals("", MissingLetters.of(TablesFixture.open(folder.resolve("plain"), 10)));
  }
}
