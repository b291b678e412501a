package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.app.Job;
import pondtally.app.JobRequest;
import pondtally.app.JobResult;
import pondtally.check.DataIssue;
import pondtally.check.RowAccount;
import pondtally.check.RowCounts;
import pondtally.check.Severity;
import pondtally.intake.FixMarks;
import pondtally.reports.fixlist.FixList;
import pondtally.reports.fixlist.ReturnMarks;
import pondtally.reports.fixture.Office;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Rows;
import pondtally.table.ResultPackage;

/** From a run to its list of rows to correct, and back with the corrections. */
class FixListRoundTripSparkTest {

  private static final Path SAMPLE = Path.of("..", "sample-data");

  @TempDir Path folder;

  @Test
  void correctionsSavedByLibreOfficeReplaceTheirRows() throws Exception {
    Office.needed();
    Path program = small();
    Run before = run(program, "before");
    assertEquals(2, before.sum(RowCounts::setAside));
    Path corrected = folder.resolve("corrected.xlsx");
    try (FixListPages pages = new FixListPages(before.list())) {
      pages.type("north/visits.csv", "", "3", "Condition", "failed");
      pages.type("north/visits.csv", "", "4", "Visit date", "2024-02-29");
      pages.save(corrected);
    }
    Path saved = Office.convert(corrected, "xlsx", Files.createDirectories(folder.resolve("o")));
    Files.copy(saved, program.resolve("north/from north, May.xlsx"));

    Run after = run(program, "after");

    assertEquals(0, after.sum(RowCounts::setAside));
    assertEquals(before.sum(RowCounts::read), after.sum(RowCounts::read));
    assertEquals(before.sum(RowCounts::changed) + 2, after.sum(RowCounts::changed));
    assertEquals(2, after.count("row-mended"));
    assertEquals(0, after.count("mend-refused"));
    Files.writeString(
        program.resolve("north/visits.csv"),
        Files.readString(program.resolve("north/visits.csv")).replace("broke", "reduced"));
    Run changed = run(program, "changed");
    assertEquals(1, changed.count("row-mended"));
    assertEquals(1, changed.count("mend-refused"));
  }

  private Path small() throws IOException {
    Path north = Files.createDirectories(folder.resolve("program/north"));
    Files.writeString(north.resolve("sites.csv"), "Site,Watershed\nS-1,01020304\n");
    Files.writeString(
        north.resolve("installs.csv"), "Device,Site,Install date\nD-1,S-1,2023-05-01\n");
    Files.writeString(
        north.resolve("visits.csv"),
        "Device,Visit date,Condition,Notes\n"
            + "D-1,2023-09-01,working,\n"
            + "D-1,2023-10-01,broke,\"=1+1, é\"\n"
            + "D-1,2024-02-30,working,\n");
    return north.getParent();
  }

  /** Somebody who knows the answers corrects one cell of every row that was set aside. */
  @Test
  void nothingOfTheSampleStaysSetAsideThatAPersonCanCorrect() throws Exception {
    Path program = copy(SAMPLE, folder.resolve("sample"));
    Run before = run(program, "before");
    assertTrue(before.sum(RowCounts::setAside) > 50);
    SampleAnswers answers = new SampleAnswers(before.tables());
    try (FixListPages pages = new FixListPages(before.list())) {
      for (DataIssue issue : before.result().issues()) {
        if (issue.severity() == Severity.SET_ASIDE) {
          answers.correct(issue, pages);
        }
      }
      pages.save(program.resolve("lowmarrow/rows corrected in May.xlsx"));
    }

    Run after = run(program, "after");

    assertEquals(List.of(), after.setAside());
    assertEquals(0, after.count("mend-refused"));
    assertEquals(before.sum(RowCounts::read), after.sum(RowCounts::read));
    assertEquals(answers.typed, after.count("row-mended"));
    assertTrue(after.sum(RowCounts::changed) > before.sum(RowCounts::changed) + 40);
  }

  private static Path copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path copy = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
    }
    return to;
  }

  private Run run(Path program, String name) throws IOException {
    int today = (int) LocalDate.of(2026, 2, 1).toEpochDay();
    JobRequest request =
        new JobRequest(program, today, OptionalInt.empty(), OptionalInt.empty(), 2);
    JobResult result = Job.run(request);
    Path tables = Files.createDirectories(folder.resolve(name).resolve("tables"));
    ResultPackage.write(tables, result.tables(), result.facts());
    TablePackage opened = TablePackage.open(tables);
    Path list = folder.resolve(name).resolve("fix-list.xlsx");
    FixList.write(opened, new ReturnMarks(FixMarks.FIX_LIST, InputForms.all()), list);
    return new Run(result, opened, list);
  }

  private record Run(JobResult result, TablePackage tables, Path list) {

    long sum(ToLongFunction<RowCounts> count) {
      return result.account().stream().map(RowAccount::counts).mapToLong(count).sum();
    }

    long count(String rule) {
      return result.issues().stream().filter(issue -> issue.rule().equals(rule)).count();
    }

    List<String> setAside() {
      return result.issues().stream()
          .filter(issue -> issue.severity() == Severity.SET_ASIDE)
          .map(
              issue ->
                  issue.file() + " " + issue.sheet() + " " + issue.row() + ": " + issue.message())
          .toList();
    }
  }

  /** What the partners of the sample know: the right value for each cell at fault. */
  private static final class SampleAnswers {

    private final Map<String, String> installedOn = new HashMap<>();
    private final Map<String, String> deviceOf = new HashMap<>();
    private final Map<String, String> siteOf = new HashMap<>();
    private int next;
    private int typed;

    SampleAnswers(TablePackage tables) {
      Rows.of(tables, "devices")
          .list()
          .forEach(
              row -> {
                String device = row.text("device_id");
                installedOn.put(device, row.text("installed_on"));
                if (row.text("state").equals("working")) {
                  deviceOf.merge(row.text("partner"), device, this::older);
                }
                siteOf.putIfAbsent(row.text("partner"), row.text("site_id"));
              });
    }

    private String older(String a, String b) {
      return installedOn.get(a).compareTo(installedOn.get(b)) <= 0 ? a : b;
    }

    void correct(DataIssue issue, FixListPages pages) {
      // Nothing is wrong with such a row: it counts once the row of its device does.
      if (issue.rule().equals("device-set-aside")) {
        return;
      }
      typed++;
      String row = String.valueOf(issue.row());
      pages.type(issue.file(), issue.sheet(), row, issue.column(), answer(issue, pages));
    }

    private String answer(DataIssue issue, FixListPages pages) {
      if (!issue.suggestion().isEmpty()) {
        return issue.suggestion();
      }
      return switch (issue.rule()) {
        case "unknown-device" -> deviceOf.get(issue.partner());
        case "unknown-site" -> siteOf.get(issue.partner());
        case "install-differs" -> "NEW-" + ++next;
        case "removals-counted-twice" -> "2011";
        case "unknown-unit", "unreadable-number", "out-of-range", "missing-required" ->
            value(issue, pages);
        case "unknown-code" -> code(issue);
        default -> day(issue, pages);
      };
    }

    private String value(DataIssue issue, FixListPages pages) {
      return switch (issue.column().toLowerCase(java.util.Locale.ROOT)) {
        case "quantity", "acres" -> "2";
        case "year" -> "2012";
        case "property" -> "NEW-" + ++next;
        case "condition", "item" -> code(issue);
        default -> day(issue, pages);
      };
    }

    private static String code(DataIssue issue) {
      return issue.table().equals("materials") ? "other" : "working";
    }

    /** The day after the install for visits; any day for measurements. */
    private String day(DataIssue issue, FixListPages pages) {
      if (!issue.table().equals("revisits")) {
        return "2024-06-15";
      }
      for (String heading : List.of("Device", "Device id", "Device ID", "Tag", "device_id")) {
        try {
          String device =
              pages.text(issue.file(), issue.sheet(), String.valueOf(issue.row()), heading);
          return LocalDate.parse(installedOn.get(device)).plusDays(1).toString();
        } catch (AssertionError e) {
          // Another partner's heading.
        }
      }
      throw new AssertionError("no device in " + issue);
    }
  }
}
