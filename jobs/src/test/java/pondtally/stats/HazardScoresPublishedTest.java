package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.stats.HazardReference.close;
import static pondtally.stats.HazardReference.number;
import static pondtally.stats.HazardReference.whole;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Clustered errors, concordance and proportionality with late entry, strata and several columns,
 * against a reference library.
 */
class HazardScoresPublishedTest {
  @ParameterizedTest
  @CsvSource({
    "channing_cox_gender_efron, obs",
    "channing_cox_gender_breslow, obs",
    "veteran_strata_celltype_efron, age",
    "veteran_full_efron, diagtime"
  })
  void clusteredErrors(String name, String cluster) {
    HazardModels model = HazardModels.clustered(name, cluster);
    List<Map<String, String>> expected = HazardReference.rows("cox_robust", "model", name);
    assertEquals(expected.size(), model.fit().terms().size());
    for (int j = 0; j < expected.size(); j++) {
      HazardTerm.Estimate e = model.fit().terms().get(j).estimate().orElseThrow();
      close(number(expected.get(j), "se_model"), e.modelStandardError(), 1e-8, 0, name);
      close(
          number(expected.get(j), "se_robust"),
          e.robustStandardError().getAsDouble(),
          1e-8,
          0,
          name);
    }
  }

  @Test
  void proportionalityWithLateEntryAndStrata() {
    for (Map<String, String> row : HazardReference.rows("cox_zph_late_entry_and_strata")) {
      HazardTransform transform =
          HazardTransform.valueOf(row.get("transform").toUpperCase(java.util.Locale.ROOT));
      HazardProportionality tests =
          HazardModels.of(row.get("model")).fit().proportionality(transform);
      HazardTest test =
          switch (row.get("term")) {
            case "GLOBAL" -> tests.all().orElseThrow();
            case "karno" -> tests.tests().get(1).orElseThrow();
            default -> tests.tests().get(0).orElseThrow();
          };
      close(number(row, "chisq"), test.statistic(), 1e-7, 0, row.toString());
      close(number(row, "p"), test.pValue(), 1e-7, 0, row.toString());
      assertEquals(number(row, "df"), test.degreesOfFreedom());
    }
  }

  @Test
  void concordanceWithLateEntry() {
    Map<String, String> row = HazardReference.rows("cox_concordance_late_entry").get(0);
    HazardConcordance c = HazardModels.of(row.get("model")).fit().concordance();
    assertEquals(whole(row, "concordant"), c.concordant());
    assertEquals(whole(row, "discordant"), c.discordant());
    assertEquals(whole(row, "tied_x"), c.tiedPrediction());
    assertEquals(whole(row, "tied_y"), c.tiedAge());
    assertEquals(whole(row, "tied_xy"), c.tiedBoth());
    close(number(row, "concordance"), c.value().getAsDouble(), 1e-12, 0, "C");
    close(number(row, "std"), c.standardError().getAsDouble(), 1e-10, 0, "error of C");
  }
}
