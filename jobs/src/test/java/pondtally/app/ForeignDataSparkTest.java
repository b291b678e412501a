package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Published survival data sent through the whole job as a program folder: units are devices
 * installed on one day, times are visits, {@code failure_dated: discovery}. The curves and tests
 * that come out are those that R's survival package 3.5-3 gives (files and sources: {@code
 * published/curves/README.md}).
 */
class ForeignDataSparkTest {

  private static final Path PUBLISHED = Path.of("src", "test", "resources", "published", "curves");
  private static final LocalDate START = LocalDate.of(1900, 1, 1);

  @TempDir private Path folder;

  /** One unit of a published data set. */
  private record Unit(String id, String wall, int inches, int entry, int exit, boolean failed) {}

  private JobResult run(List<Unit> units) throws IOException {
    StringBuilder sites = new StringBuilder("site_id,watershed,setting\n");
    StringBuilder installs =
        new StringBuilder(
            "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,tracked_from\n");
    StringBuilder revisits = new StringBuilder("device_id,visited_on,condition\n");
    for (Unit unit : units) {
      sites.append("S%s,990101010101,farmland%n".formatted(unit.id));
      installs.append(
          "D%s,S%s,%s,pond-leveler,%s,%d,%s%n"
              .formatted(
                  unit.id,
                  unit.id,
                  START.plusYears(60),
                  unit.wall,
                  unit.inches,
                  START.plusYears(60).plusDays(unit.entry)));
      revisits.append(
          "D%s,%s,%s%n"
              .formatted(
                  unit.id,
                  START.plusYears(60).plusDays(unit.exit),
                  unit.failed ? "failed" : "working"));
    }
    Files.writeString(
        folder.resolve("program.yaml"), "failure_dated: discovery\nbase_year: 2020\n");
    Files.writeString(folder.resolve("sites.csv"), sites);
    Files.writeString(folder.resolve("installs.csv"), installs);
    Files.writeString(folder.resolve("revisits.csv"), revisits);
    return SampleRun.of(folder);
  }

  private static void assertCurve(JobResult result, String file, Map<String, String> pipeOfGroup)
      throws IOException {
    List<CSVRecord> rows = SampleRun.rows(result, "survival_curves");
    int compared = 0;
    for (CSVRecord expected : SampleRun.read(PUBLISHED.resolve(file))) {
      String group = expected.get("group").substring(expected.get("group").indexOf('=') + 1);
      CSVRecord actual =
          rows.stream()
              .filter(
                  row ->
                      row.get("grouping").equals("pipe")
                          && row.get("group").equals(pipeOfGroup.get(group))
                          && Double.parseDouble(row.get("time_days"))
                              == Double.parseDouble(expected.get("time")))
              .findFirst()
              .orElseThrow();
      same(expected, "n_risk", actual, "at_risk");
      same(expected, "n_event", actual, "events");
      same(expected, "n_censor", actual, "censored");
      same(expected, "survival", actual, "survival");
      if (!expected.get("se_greenwood").isEmpty()) {
        same(expected, "se_greenwood", actual, "std_error");
      }
      if (!expected.get("lower_loglog").isEmpty()) {
        same(expected, "lower_loglog", actual, "lower");
        same(expected, "upper_loglog", actual, "upper");
      }
      compared++;
    }
    assertFalse(compared == 0);
  }

  private static void same(CSVRecord expected, String a, CSVRecord actual, String b) {
    double value = Double.parseDouble(expected.get(a));
    assertEquals(
        value, Double.parseDouble(actual.get(b)), 1e-9 * Math.abs(value), actual.toString());
  }

  private static void assertLogRank(JobResult result, String comparison) throws IOException {
    CSVRecord expected =
        SampleRun.read(PUBLISHED.resolve("logrank_tests.csv")).stream()
            .filter(
                row ->
                    row.get("comparison").equals(comparison) && row.get("test").equals("logrank"))
            .findFirst()
            .orElseThrow();
    CSVRecord actual =
        SampleRun.rows(result, "group_tests").stream()
            .filter(
                row ->
                    row.get("test").equals("log-rank")
                        && row.get("grouping").equals("pipe")
                        && row.get("strata").isEmpty()
                        && row.get("group_a").isEmpty())
            .findFirst()
            .orElseThrow();
    same(expected, "chisq", actual, "statistic");
    same(expected, "df", actual, "df");
    same(expected, "p", actual, "p_value");
  }

  @Test
  void remissionTimesOfFreireich1963() throws IOException {
    JobResult result =
        run(
            numbered(SampleRun.read(PUBLISHED.resolve("gehan_6mp.csv"))).stream()
                .map(
                    row ->
                        new Unit(
                            row.getKey(),
                            row.getValue().get("group").equals("6-MP") ? "dual" : "single",
                            12,
                            0,
                            Integer.parseInt(row.getValue().get("time")),
                            row.getValue().get("status").equals("1")))
                .toList());
    assertCurve(result, "km_gehan.csv", Map.of("6-MP", "dual 12 in", "control", "single 12 in"));
    assertLogRank(result, "gehan: 6-MP v control");
    CSVRecord summary =
        SampleRun.rows(result, "survival_summary").stream()
            .filter(
                row -> row.get("group").equals("dual 12 in") && row.get("grouping").equals("pipe"))
            .findFirst()
            .orElseThrow();
    // Kleinbaum & Klein, Survival Analysis, chapter 2: median remission 23 weeks (here days).
    assertEquals(23, Double.parseDouble(summary.get("median_years")) * 365.25, 1e-9);
  }

  @Test
  void lungCancerTrialOfKalbfleischAndPrentice1980() throws IOException {
    Map<String, String> pipe =
        Map.of(
            "squamous", "single 10 in",
            "smallcell", "single 12 in",
            "adeno", "dual 12 in",
            "large", "dual 15 in");
    JobResult result =
        run(
            numbered(SampleRun.read(PUBLISHED.resolve("veteran.csv"))).stream()
                .map(
                    row -> {
                      String[] type = pipe.get(row.getValue().get("celltype")).split(" ");
                      return new Unit(
                          row.getKey(),
                          type[0],
                          Integer.parseInt(type[1]),
                          0,
                          Integer.parseInt(row.getValue().get("time")),
                          row.getValue().get("status").equals("1"));
                    })
                .toList());
    assertCurve(result, "km_veteran_celltype.csv", pipe);
    assertLogRank(result, "veteran: celltype (4)");
  }

  @Test
  void lateEntryInTheChanningHouseDataOfHyde1977() throws IOException {
    JobResult result =
        run(
            numbered(SampleRun.read(PUBLISHED.resolve("channing.csv"))).stream()
                .filter(
                    row ->
                        Integer.parseInt(row.getValue().get("age"))
                            > Integer.parseInt(row.getValue().get("ageentry")))
                .map(
                    row ->
                        new Unit(
                            row.getKey(),
                            row.getValue().get("gender").equals("1") ? "single" : "dual",
                            12,
                            Integer.parseInt(row.getValue().get("ageentry")),
                            Integer.parseInt(row.getValue().get("age")),
                            row.getValue().get("death").equals("1")))
                .toList());
    assertCurve(
        result, "lefttrunc_channing.csv", Map.of("male", "single 12 in", "female", "dual 12 in"));
  }

  private static List<Map.Entry<String, CSVRecord>> numbered(List<CSVRecord> rows) {
    return rows.stream().map(row -> Map.entry(Long.toString(row.getRecordNumber()), row)).toList();
  }
}
