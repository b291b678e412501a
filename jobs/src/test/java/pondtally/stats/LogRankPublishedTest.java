package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.count;
import static pondtally.stats.Published.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The log-rank family on published data sets, against R's survdiff and printed figures. */
class LogRankPublishedTest {
  private static final Map<String, LogRankWeight> WEIGHTS =
      Map.of(
          "logrank", LogRankWeight.LOG_RANK,
          "gehan_breslow", LogRankWeight.GEHAN_BRESLOW,
          "tarone_ware", LogRankWeight.TARONE_WARE,
          "peto_peto", LogRankWeight.PETO_PETO,
          "modified_peto_peto", LogRankWeight.MODIFIED_PETO_PETO,
          "fh_1_0", LogRankWeight.gRho(1, 0),
          "fh_0_1", LogRankWeight.gRho(0, 1),
          "fh_1_1", LogRankWeight.gRho(1, 1),
          "fh_0.5_0", LogRankWeight.gRho(0.5, 0));

  @Test
  void allComparisonsAgreeWithReference() {
    List<CSVRecord> expected = Published.rows("curves/logrank_tests.csv");
    assertEquals(60, expected.size());
    for (CSVRecord row : expected) {
      LogRank test = LogRank.stratified(strata(row.get("comparison")), weight(row));
      assertCell(row, "chisq", test.chiSquare());
      assertEquals(count(row, "df"), test.degreesOfFreedom());
      assertCell(row, "p", test.pValue());
      if (!row.get("trend_scores").isEmpty()) {
        assertEquals("1 2 3 4", row.get("trend_scores"));
        LogRank.Trend trend = test.trend(1, 2, 3, 4);
        assertCell(row, "trend_z", trend.z());
        assertCell(row, "trend_p", trend.pValue());
      }
    }
  }

  @Test
  void observedAndExpectedAgreeWithReference() {
    List<CSVRecord> expected = Published.rows("curves/logrank_groups.csv");
    assertEquals(160, expected.size());
    for (CSVRecord row : expected) {
      String comparison = row.get("comparison");
      LogRank test = LogRank.stratified(strata(comparison), weight(row));
      int group = groupsOf(comparison).indexOf(row.get("group"));
      assertEquals(count(row, "n"), test.lives(group));
      assertCell(row, "observed", test.observed(group));
      assertCell(row, "expected", test.expected(group));
      assertCell(row, "u", test.score(group));
      assertCell(row, "var_u", test.covariance(group, group));
    }
  }

  /**
   * Channing House (Hyde 1977), women against men: with delayed entry the log-rank statistic is the
   * score test of R's {@code coxph(Surv(ageentry, age, death) ~ sex, ties = "exact")}, survival
   * 3.5-3.
   */
  @Test
  void delayedEntryAgreesWithScoreTest() {
    assertEquals(3.37646071064618, channing(0), 1e-9);
    assertEquals(2.33528055101681, channing(816), 1e-9);
  }

  private static double channing(double fromMonths) {
    List<RiskTable> sexes =
        List.of(
            PublishedLives.channing("female", fromMonths).anyEvent(),
            PublishedLives.channing("male", fromMonths).anyEvent());
    return LogRank.of(sexes, LogRankWeight.LOG_RANK).chiSquare().getAsDouble();
  }

  /** Klein & Moeschberger, example 7.2; Kleinbaum & Klein, chapter 2; typed from memory. */
  @Test
  void printedStatistics() {
    List<List<RiskTable>> dialysis = strata("dialysis: surgical v percutaneous");
    assertEquals(2.53, chiSquare(dialysis, "logrank"), 0.005);
    assertEquals(0.002, chiSquare(dialysis, "gehan_breslow"), 0.0005);
    assertEquals(0.40, chiSquare(dialysis, "tarone_ware"), 0.005);
    assertEquals(1.40, chiSquare(dialysis, "peto_peto"), 0.005);
    assertEquals(1.28, chiSquare(dialysis, "modified_peto_peto"), 0.005);
    assertEquals(1.39, chiSquare(dialysis, "fh_1_0"), 0.005);
    assertEquals(9.67, chiSquare(dialysis, "fh_0_1"), 0.005);
    assertEquals(9.83, chiSquare(dialysis, "fh_1_1"), 0.005);
    List<List<RiskTable>> gehan = strata("gehan: 6-MP v control");
    assertEquals(16.79, chiSquare(gehan, "logrank"), 0.005);
    LogRank remission = LogRank.stratified(gehan, LogRankWeight.LOG_RANK);
    assertEquals(19.25, remission.expected(0), 0.005);
    assertEquals(10.75, remission.expected(1), 0.005);
    List<List<RiskTable>> larynx = strata("larynx: stage (4) with trend 1 2 3 4");
    assertEquals(22.76, chiSquare(larynx, "logrank"), 0.005);
    LogRank stages = LogRank.stratified(larynx, LogRankWeight.LOG_RANK);
    assertEquals(3.72, stages.trend(1, 2, 3, 4).z().getAsDouble(), 0.005);
  }

  private static double chiSquare(List<List<RiskTable>> strata, String weight) {
    return LogRank.stratified(strata, WEIGHTS.get(weight)).chiSquare().getAsDouble();
  }

  private static LogRankWeight weight(CSVRecord row) {
    return WEIGHTS.get(row.get("test"));
  }

  private static List<String> groupsOf(String comparison) {
    return switch (comparison) {
      case "gehan: 6-MP v control", "gehan: stratified by pair" -> List.of("6-MP", "control");
      case "aml: maintained v not" -> List.of("Maintained", "Nonmaintained");
      case "dialysis: surgical v percutaneous",
          "veteran: trt",
          "veteran: trt stratified by celltype" ->
          List.of("1", "2");
      case "veteran: celltype (4)", "veteran: celltype stratified by prior" ->
          List.of("squamous", "smallcell", "adeno", "large");
      case "larynx: stage (4) with trend 1 2 3 4" -> List.of("1", "2", "3", "4");
      default -> throw new IllegalArgumentException(comparison);
    };
  }

  private static List<List<RiskTable>> strata(String comparison) {
    List<String> groups = groupsOf(comparison);
    return switch (comparison) {
      case "gehan: 6-MP v control" -> strata("gehan_6mp", "status", "group", groups, "");
      case "gehan: stratified by pair" -> strata("gehan_6mp", "status", "group", groups, "pair");
      case "aml: maintained v not" -> strata("aml", "status", "group", groups, "");
      case "dialysis: surgical v percutaneous" ->
          strata("dialysis_catheter", "status", "type", groups, "");
      case "veteran: trt" -> strata("veteran", "status", "trt", groups, "");
      case "veteran: trt stratified by celltype" ->
          strata("veteran", "status", "trt", groups, "celltype");
      case "veteran: celltype (4)" -> strata("veteran", "status", "celltype", groups, "");
      case "veteran: celltype stratified by prior" ->
          strata("veteran", "status", "celltype", groups, "prior");
      case "larynx: stage (4) with trend 1 2 3 4" -> strata("larynx", "delta", "stage", groups, "");
      default -> throw new IllegalArgumentException(comparison);
    };
  }

  private static List<List<RiskTable>> strata(
      String file, String status, String group, List<String> groups, String stratum) {
    Map<String, List<CountedLives>> strata = new TreeMap<>();
    for (CSVRecord row : Published.rows("curves/" + file + ".csv")) {
      String key = stratum.isEmpty() ? "" : row.get(stratum);
      List<CountedLives> lives =
          strata.computeIfAbsent(
              key,
              k -> new ArrayList<>(groups.stream().map(g -> CountedLives.ofOneKind()).toList()));
      lives
          .get(groups.indexOf(row.get(group)))
          .add(0, number(row, "time"), (int) number(row, status));
    }
    return strata.values().stream()
        .map(groupsThere -> groupsThere.stream().map(CountedLives::anyEvent).toList())
        .toList();
  }
}
