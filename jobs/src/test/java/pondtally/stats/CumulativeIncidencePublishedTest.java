package pondtally.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pondtally.stats.Published.assertCell;
import static pondtally.stats.Published.count;
import static pondtally.stats.Published.number;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Monoclonal gammopathy of Kyle et al. 2002: progression (pcm) and death compete. */
class CumulativeIncidencePublishedTest {
  private static final List<String> CAUSES = List.of("pcm", "death");

  @Test
  void everyTimeAgreesWithReference() {
    List<CSVRecord> rows = Published.rows("curves/aj_mgus2.csv");
    assertEquals(722, rows.size());
    for (String sex : List.of("F", "M", "all")) {
      List<CSVRecord> expected = rows.stream().filter(r -> r.get("group").equals(sex)).toList();
      CountedLives lives = PublishedLives.mgus2(sex);
      for (String cause : CAUSES) {
        CumulativeIncidence curve = CumulativeIncidence.of(lives, CAUSES.indexOf(cause) + 1);
        assertEquals(expected.size(), curve.rows());
        for (int i = 0; i < curve.rows(); i++) {
          CSVRecord row = expected.get(i);
          assertEquals(number(row, "time"), curve.time(i));
          assertEquals(count(row, "n_risk"), curve.atRisk(i));
          assertEquals(count(row, "n_" + cause), curve.events(i));
          assertCell(row, "cif_" + cause, curve.incidence(i));
          assertCell(row, "se_ij_" + cause, curve.stdError(i));
          assertCell(row, "se_delta_" + cause, curve.stdError(i));
        }
      }
    }
  }

  @Test
  void chosenTimesAgreeWithThreePrograms() {
    List<CSVRecord> rows = Published.rows("curves/aj_mgus2_at_times.csv");
    assertEquals(20, rows.size());
    for (CSVRecord row : rows) {
      CumulativeIncidence curve =
          CumulativeIncidence.of(
              PublishedLives.mgus2(row.get("sex")), CAUSES.indexOf(row.get("cause")) + 1);
      double t = number(row, "time");
      assertCell(row, "cif", curve.at(t));
      assertCell(row, "cmprsk_cif", curve.at(t));
      assertCell(row, "se_survfit_ij", curve.stdErrorAt(t));
      assertCell(row, "se_delta", curve.stdErrorAt(t));
      assertCell(row, "se_etm_greenwood", curve.stdErrorAt(t));
    }
  }
}
