package pondtally.reports.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

class SurvivalChecksTest {

  @TempDir private Path folder;

  @BeforeEach
  void write() throws Exception {
    TablesFixture.open(folder, 120);
  }

  private List<String> said() throws Exception {
    TablePackage tables = TablePackage.open(folder);
    List<Sentence> sentences = new ArrayList<>();
    SurvivalChecks.undated(tables, sentences);
    SurvivalChecks.withinWatersheds(tables, sentences);
    return sentences.stream().map(s -> s.text().replace('\u00a0', ' ')).toList();
  }

  private void put(String table, String text, String rowWith, String... columns) throws Exception {
    EditedTables.of(folder, table).put(text, row -> row.contains(rowWith), columns).save();
  }

  @Test
  void theEstimateWithoutDaysStandsBesideTheCurve() throws Exception {
    assertTrue(
        said()
            .get(0)
            .contains(
                "without giving failures a day, about 86 of 100 (likely 79 to 92) go 3 years without"
                    + " a failure; the curve, which dates them halfway between the two visits, has"
                    + " about"),
        said().get(0));
  }

  @Test
  void aDifferenceThatOnlyShowsWithinWatershedsIsSaid() throws Exception {
    assertEquals(
        "The two comparisons disagree: pipe types do not differ clearly over all watersheds, but they"
            + " do when compared within the same watershed. Differences between watersheds hide what"
            + " the pipe does (over all watersheds p = 0.212, within watersheds p = 0.020).",
        said().get(1));
    assertEquals(
        "For single-wall 12 in pipes against dual-wall 12 in pipes the two disagree: the failure rate"
            + " is 1.3 (likely 0.62 to 2.8) times as high over all watersheds, but 2.5 (likely"
            + " 1.1 to 5.6) times within the same watershed. Quote the second, with its limits.",
        said().get(2));
  }

  @Test
  void aDifferenceThatGoesAwayWithinWatershedsIsSaid() throws Exception {
    put("group_tests", "0.0003", "0.2122", "p_value");
    put("group_tests", "0.4", "watershed", "p_value");
    assertTrue(said().get(1).contains("What looks like the pipe may be the valley or its crew"));
    assertTrue(said().get(1).contains("(over all watersheds p below 0.001, within watersheds p ="));
  }

  @Test
  void agreementIsSaidOnceAndRatiosThatAgreeAreNotNamed() throws Exception {
    put("group_tests", "0.4", "watershed", "p_value");
    put("hazard_ratios", "0.9", "pipe, stratified by watershed", "lower");
    assertEquals(2, said().size());
    assertTrue(said().get(1).contains("pipe types do not differ clearly either"));
  }

  @Test
  void withoutTheTestsNothingIsSaid() throws Exception {
    put("group_tests", "", "watershed", "p_value");
    put("hazard_ratios", "", "pipe, stratified by watershed", "hazard_ratio");
    put("survival_summary", "", "interval", "survival_3y");
    assertEquals(List.of(), said());
    assertFalse(Summary.of(TablePackage.open(folder)).isEmpty());
  }
}
