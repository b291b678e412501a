package pondtally.reports.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.FigureLookup;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

class GrantTest {

  @TempDir Path folder;

  private TablePackage full() throws Exception {
    return TablesFixture.open(folder, 120, Map.of("period_year", "2025"));
  }

  private static List<Sentence> sentences(TablePackage tables) {
    List<Sentence> all = new ArrayList<>();
    for (GrantSection section : Grant.of(tables)) {
      all.addAll(section.sentences());
      section.tables().forEach(table -> table.rows().forEach(all::addAll));
    }
    return all;
  }

  @Test
  void everyPrintedFigureIsInTheCellThatItNames() throws Exception {
    TablePackage tables = full();
    int figures = 0;
    for (Sentence sentence : sentences(tables)) {
      for (Figure figure : sentence.figures()) {
        assertTrue(sentence.text().contains(figure.printed()), sentence.text());
        FigureLookup.assertPrinted(tables, figure);
        figures++;
      }
    }
    assertTrue(figures > 250, figures + " figures");
  }

  @Test
  void everyNumberIsAFigureOrAName() throws Exception {
    for (Sentence sentence : sentences(full())) {
      String rest = sentence.text();
      for (Figure figure : sentence.figures()) {
        rest = rest.replaceFirst(Pattern.quote(figure.printed()), "");
      }
      // What is left names an age, a pipe size, a year, a date, a watershed or a rule.
      rest =
          rest.replaceAll(
              "95%|99\\.8%|100 device-years|1[02].in|3.years|202[1-8]|(January|December).\\d+,|"
                  + "360.days|19 times in 20|sides of 1|the 4 large|990[12]0[12]0[1-4]|2 CFR 200.306",
              "");
      assertFalse(FigureLookup.NUMBER.matcher(rest).find(), rest);
    }
  }

  @Test
  void noCellIsEmptyAndEachRowFitsItsHeadings() throws Exception {
    for (GrantSection section : Grant.of(full())) {
      for (GrantTable table : section.tables()) {
        assertFalse(table.note().isBlank(), table.title());
        for (List<Sentence> row : table.rows()) {
          assertEquals(table.columns().size(), row.size());
          row.forEach(cell -> assertFalse(cell.text().isBlank(), table.title()));
        }
      }
    }
  }

  @Test
  void cashAloneAndWithInKindStandSideBySide() throws Exception {
    GrantTable table = table(full(), "What one unit of outcome cost, in dollars of 2024");
    assertEquals(
        List.of("Unit", "Cash alone", "Cash and in-kind value", "Based on"), table.columns());
    // 95,000.25 and 104,000.50 dollars over 41 properties, limits 0.8 and 1.4 times.
    assertEquals("$2,300 (likely $1,900 to $3,200)", text(table, 0, 1));
    assertEquals("$2,500 (likely $2,000 to $3,600)", text(table, 0, 2));
    assertEquals("41 properties; 4 site clusters left out", text(table, 0, 3));
    assertEquals("not known", text(table, 1, 2));
  }

  @Test
  void matchThatIsNotMetIsSaid() throws Exception {
    TablePackage tables = full();
    assertTrue(
        all(tables)
            .contains(
                "Clearwater fund (invented), award of January 1, 2025 to December 31, 2025, requires"
                    + " $10,000 of match; what is recorded and claimed does not reach it yet."));
    GrantTable table = table(tables, "Who paid, in dollars of the day");
    assertEquals("not yet", text(table, 0, 7));
    assertEquals("outside every period", text(table, 1, 1));
    assertEquals("not known", text(table, 1, 5));
  }

  @Test
  void withheldIsSaidAndNeverANumber() throws Exception {
    full();
    EditedTables.of(folder, "properties")
        .put("withheld", row -> row.contains("road"), "properties_protected")
        .save();
    GrantTable table = table(TablePackage.open(folder), "Properties by type");
    assertEquals("withheld", text(table, 0, 2));
  }

  @Test
  void singularAndPlural() throws Exception {
    TablePackage one = TablesFixture.open(folder, 1, Map.of("period_year", "2025"));
    String text = all(one);
    assertTrue(text.contains("The records hold 1 site. By setting: road crossing 1."), text);
    assertFalse(text.contains(" 1 devices") || text.contains("1 sites"), text);
  }

  private static GrantTable table(TablePackage tables, String title) {
    return Grant.of(tables).stream()
        .flatMap(section -> section.tables().stream())
        .filter(table -> table.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  private static String text(GrantTable table, int row, int column) {
    return table.rows().get(row).get(column).text().replace('\u00a0', ' ');
  }

  private static String all(TablePackage tables) {
    StringBuilder text = new StringBuilder();
    sentences(tables).forEach(sentence -> text.append(sentence.text()).append('\n'));
    return text.toString().replace('\u00a0', ' ');
  }
}
