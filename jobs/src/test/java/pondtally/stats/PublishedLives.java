package pondtally.stats;

import static pondtally.stats.Published.number;

import java.util.function.Function;
import org.apache.commons.csv.CSVRecord;

/** The published data sets as counted lives. */
final class PublishedLives {
  private PublishedLives() {}

  static CountedLives gehan(String group) {
    return select("gehan_6mp.csv", "group", group, "time", "status");
  }

  static CountedLives aml(String group) {
    return select("aml.csv", "group", group, "time", "status");
  }

  static CountedLives veteran(String cellType) {
    return select("veteran.csv", "celltype", cellType, "time", "status");
  }

  static CountedLives dialysis(String type) {
    return select("dialysis_catheter.csv", "type", type, "time", "status");
  }

  static CountedLives larynx(String stage) {
    return select("larynx.csv", "stage", stage, "time", "delta");
  }

  /** Lives of a file whose column has the value given; "all" takes every row. */
  static CountedLives select(String file, String column, String value, String time, String status) {
    CountedLives lives = CountedLives.ofOneKind();
    for (CSVRecord row : Published.rows("curves/" + file)) {
      if (value.equals("all") || row.get(column).equals(value)) {
        lives.add(0, number(row, time), (int) number(row, status));
      }
    }
    return lives;
  }

  /** Residents of Channing House by sex, followed from an age in months not below the one given. */
  static CountedLives channing(String sex, double fromMonths) {
    String code = sex.equals("male") ? "1" : "2";
    CountedLives lives = CountedLives.ofOneKind();
    for (CSVRecord row : Published.rows("curves/channing.csv")) {
      double entry = Math.max(fromMonths, number(row, "ageentry"));
      // Four residents left in the month they came; the reference drops them too.
      if (row.get("gender").equals(code) && number(row, "age") > entry) {
        lives.add(entry, number(row, "age"), (int) number(row, "death"));
      }
    }
    return lives;
  }

  static CountedLives edgeCase(String set) {
    CountedLives lives = CountedLives.ofOneKind();
    for (CSVRecord row : Published.rows("curves/edge_cases.csv")) {
      if (row.get("set").equals(set)) {
        lives.add(number(row, "entry"), number(row, "time"), (int) number(row, "status"));
      }
    }
    return lives;
  }

  /** Monoclonal gammopathy: kind 1 is progression (pcm), kind 2 death. */
  static CountedLives mgus2(String sex) {
    Function<String, Integer> kind = e -> e.equals("pcm") ? 1 : e.equals("death") ? 2 : 0;
    CountedLives lives = CountedLives.ofKinds(2);
    for (CSVRecord row : Published.rows("curves/mgus2_competing.csv")) {
      if (sex.equals("all") || row.get("sex").equals(sex)) {
        lives.add(0, number(row, "time"), kind.apply(row.get("event")));
      }
    }
    return lives;
  }
}
