package pondtally.reports.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.FigureLookup;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

class SummaryTest {

  @TempDir Path folder;

  @Test
  void everyPrintedFigureIsInTheCellThatItNames() throws Exception {
    TablePackage tables = TablesFixture.open(folder, 120);
    int figures = 0;
    for (Section section : Summary.of(tables)) {
      for (Sentence sentence : section.sentences()) {
        for (Figure figure : sentence.figures()) {
          assertTrue(sentence.text().contains(figure.printed()), sentence.text());
          FigureLookup.assertPrinted(tables, figure);
          figures++;
        }
      }
    }
    assertTrue(figures > 60, figures + " figures");
  }

  @Test
  void everyNumberInASentenceIsAFigureOrAName() throws Exception {
    for (Section section : Summary.of(TablesFixture.open(folder, 120))) {
      for (Sentence sentence : section.sentences()) {
        String rest = sentence.text();
        for (Figure figure : sentence.figures()) {
          rest = rest.replaceFirst(Pattern.quote(figure.printed()), "");
        }
        // What is left names an age, a pipe size, a year, a period or a level of confidence.
        rest =
            rest.replaceAll(
                "95%|99\\.8%|100 device-years|12.in|10.in|3.years|202[56]|360.days|"
                    + "19 times in 20|sides of 1|the 4 large",
                "");
        assertFalse(FigureLookup.NUMBER.matcher(rest).find(), rest);
      }
    }
  }

  @Test
  void survivalIsToldWithItsCountAndLimits() throws Exception {
    assertTrue(
        all(TablesFixture.open(folder, 120))
            .contains(
                "Of dual-wall 12 in pipes, about 84 of 100 (likely 72 to 92) go 3 years without a failure. Based on 40 devices and 3 first failures."));
  }

  @Test
  void smallGroupsAreNamedAndNotRanked() throws Exception {
    String text = all(TablesFixture.open(folder, 120));
    assertTrue(
        text.contains(
            "Too few devices to compare (fewer than 5): pipe not recorded. Their rows are shown and not ranked."));
    assertFalse(text.contains("Of devices with pipe not recorded"));
  }

  @Test
  void noDifferenceIsClaimedThatTheTestDoesNotSupport() throws Exception {
    String text = all(TablesFixture.open(folder, 120));
    assertTrue(text.contains("The records do not show that pipe types differ"));
    assertFalse(text.contains("differ in how long they last by more"));
  }

  @Test
  void ratioWithLimitsOnBothSidesOfOneIsUndecided() throws Exception {
    assertTrue(
        all(TablesFixture.open(folder, 120))
            .contains("the records do not show whether benefit exceeds cost."));
  }

  @Test
  void singularAndPlural() throws Exception {
    String one = all(TablesFixture.open(folder.resolve("one"), 4));
    assertTrue(
        one.contains(
            "1 device has not been looked at for more than 360 days: its state is unverified."),
        one);
    String many = all(TablesFixture.open(folder.resolve("many"), 120));
    assertTrue(
        many.contains(
            "17 devices have not been looked at for more than 360 days (8 of them never): their state is unverified."),
        many);
    assertTrue(many.contains("1 partner sent nothing dated in 2025: History."));
    assertTrue(many.contains("1 site cluster is left out"));
    assertTrue(many.contains("4 site clusters are left out"));
  }

  @Test
  void whatIsNotKnownIsSaidInWords() throws Exception {
    TablePackage none =
        TablesFixture.open(folder, TablesFixture.empty("devices", "survival_summary", "costs"));
    assertEquals(1, Summary.of(none).size());
    String text = all(TablesFixture.open(folder.resolve("full"), 120));
    assertTrue(text.contains("so the age by which half fail is not known."));
    assertFalse(text.contains("NaN") || text.contains("null") || text.contains("  "), text);
  }

  @Test
  void unvaluedVolunteerHoursAreSaid() throws Exception {
    assertTrue(
        all(TablesFixture.open(folder.resolve("a"), 120))
            .contains("46 volunteer hours are not valued, because no volunteer rate is set"));
    assertFalse(
        all(TablesFixture.open(folder.resolve("b"), 120, Map.of("volunteer_rate_usd", "33")))
            .contains("are not valued"));
  }

  @Test
  void cautionsSayWhatCanKill() {
    String text = String.join(" ", Cautions.all());
    for (String needed :
        List.of(
            "can kill",
            "never release water",
            "Permits",
            "landowner",
            "licensed engineer",
            "local authority",
            "local codes",
            "Small groups",
            "observational")) {
      assertTrue(text.contains(needed), needed);
    }
  }

  private static String all(TablePackage tables) {
    StringBuilder text = new StringBuilder();
    Summary.of(tables).forEach(s -> s.sentences().forEach(x -> text.append(x.text()).append('\n')));
    return text.toString().replace('\u00a0', ' ');
  }
}
