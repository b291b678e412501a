package pondtally.reports.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;

class SummaryTest {

  private static final Pattern NUMBER = Pattern.compile("[\u2212-]?\\d[\\d,]*(\\.\\d+)?");

  @TempDir Path folder;

  @Test
  void everyPrintedFigureIsInTheCellThatItNames() throws Exception {
    TablePackage tables = TablesFixture.open(folder, 120);
    int figures = 0;
    for (Section section : Summary.of(tables)) {
      for (Sentence sentence : section.sentences()) {
        for (Figure figure : sentence.figures()) {
          assertTrue(sentence.text().contains(figure.printed()), sentence.text());
          assertPrinted(tables, figure);
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
                    + "9 times in 10|sides of 1|the 4 large",
                "");
        assertFalse(NUMBER.matcher(rest).find(), rest);
      }
    }
  }

  private static void assertPrinted(TablePackage tables, Figure figure) {
    List<Double> cells = cells(tables, figure);
    if (cells.isEmpty()) {
      return;
    }
    boolean hundred = figure.printed().contains("of\u00a0100") || figure.printed().endsWith("%");
    String printed = figure.printed().replace("of\u00a0100", "");
    List<String> numbers = new ArrayList<>();
    Matcher matcher = NUMBER.matcher(printed);
    while (matcher.find()) {
      numbers.add(matcher.group());
    }
    assertEquals(cells.size(), numbers.size(), figure.toString());
    for (int i = 0; i < cells.size(); i++) {
      double value = cells.get(i) * (hundred ? 100 : 1);
      double shown = Double.parseDouble(numbers.get(i).replace(",", "").replace('\u2212', '-'));
      assertEquals(value, shown, halfLastDigit(numbers.get(i)) + 1e-9, figure.toString());
    }
  }

  /** Half of the place of the last digit that is not a rounding zero. */
  private static double halfLastDigit(String number) {
    int point = number.indexOf('.');
    if (point >= 0) {
      return 0.5 * Math.pow(10, -(number.length() - point - 1));
    }
    String digits = number.replace(",", "");
    int zeros = 0;
    while (zeros < digits.length() - 1 && digits.charAt(digits.length() - 1 - zeros) == '0') {
      zeros++;
    }
    return 0.5 * Math.pow(10, zeros);
  }

  private static List<Double> cells(TablePackage tables, Figure figure) {
    if (figure.how() == Figure.How.FACT) {
      String fact = tables.fact(figure.columns().get(0));
      assertFalse(fact.isEmpty(), figure.toString());
      return fact.contains("-") ? List.of() : List.of(Double.valueOf(fact));
    }
    List<Row> rows =
        tables.table(figure.table()).orElseThrow().rows().stream()
            .filter(row -> matches(row, figure.key()))
            .toList();
    return switch (figure.how()) {
      case ROWS -> List.of((double) rows.size());
      case SUM ->
          List.of(
              rows.stream()
                  .mapToDouble(row -> row.number(figure.columns().get(0)).orElse(0))
                  .sum());
      default -> {
        assertEquals(1, rows.size(), figure.toString());
        yield figure.columns().stream().map(c -> rows.get(0).number(c).orElseThrow()).toList();
      }
    };
  }

  private static boolean matches(Row row, Map<String, String> key) {
    return key.entrySet().stream().allMatch(e -> row.text(e.getKey()).equals(e.getValue()));
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
