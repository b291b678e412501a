package pondtally.reports.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pondtally.reports.fixture.TableRows;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;

/** A difference never has more digits than the two figures that it lies between. */
class ChangedFigureTest {

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "11.8107, 12.4299, failures per 100 device-years, 11.8, 12.4, up 0.6",
    "6.8, 5.851, years, 6.80, 5.85, down 0.95",
    "4880.918, 4880.286, acre-years, 4880.9, 4880.3, down 0.6",
    "1.8562, 1.8534, '', 1.856, 1.853, down 0.003",
    "93, 97, failures, 93, 97, up 4",
    "474101, 474350, usd, $474101, $474350, up $249"
  })
  void aDifferenceHasTheDecimalsOfItsFigures(
      double before, double after, String unit, String first, String second, String by)
      throws Exception {
    Row row = row(before, after, unit);
    OptionalDouble difference = row.number("difference");
    assertEquals(first, plain(ChangedFigure.print(row.number("before"), difference, row)));
    assertEquals(second, plain(ChangedFigure.print(row.number("after"), difference, row)));
    assertEquals(by, plain(ChangedFigure.difference(row)));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replace(",", "");
  }

  private Row row(double before, double after, String unit) throws Exception {
    TableRows rows = new TableRows("changes");
    rows.row(
        "column",
        "any",
        "unit",
        unit,
        "before",
        before,
        "after",
        after,
        "difference",
        after - before);
    TablePackage tables = TablesFixture.open(folder, List.of(rows.build()));
    return tables.table("changes").orElseThrow().rows().get(0);
  }
}
