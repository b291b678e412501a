package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.DataIssue;
import pondtally.check.IssueBook;

/** The devices that two partners of the sample list under two ids. */
class SamplePairsSparkTest {

  private static final Path LIST =
      Path.of("src", "test", "resources", "pondtally", "sample", "planted-faults.csv");

  @TempDir Path folder;

  private static List<DataIssue> pairs(List<DataIssue> issues) {
    return issues.stream().filter(issue -> issue.rule().equals("likely-duplicate")).toList();
  }

  @Test
  void thePairsThatWerePlantedAreFoundAndNoOthers() throws IOException {
    Set<String> planted = new TreeSet<>();
    for (CSVRecord fault : SampleRun.read(LIST)) {
      if (fault.get("kind").equals("likely-duplicate")) {
        planted.add(fault.get("file") + " " + fault.get("row") + " " + fault.get("value"));
      }
    }
    Set<String> found = new TreeSet<>();
    for (DataIssue issue : pairs(SampleRun.sample().issues())) {
      found.add(issue.file() + " " + issue.row() + " " + issue.value());
    }
    assertEquals(planted, found);
  }

  /** The second account of each is then the row that does not count, and its visits no other. */
  @Test
  void theSuggestedAliasesMergeThem() throws IOException {
    List<DataIssue> pairs = pairs(SampleRun.sample().issues());
    Path program = copyOfSample();
    List<String> aliases = pairs.stream().map(DataIssue::suggestion).toList();
    Files.writeString(
        program.resolve("aliases.csv"), "kind,id,same_as\n" + String.join("\n", aliases) + "\n");
    int day = (int) LocalDate.of(2026, 2, 1).toEpochDay();
    IssueBook merged =
        Job.check(new JobRequest(program, day, OptionalInt.empty(), OptionalInt.empty(), 2));
    assertEquals(List.of(), pairs(merged.issues()));
    assertEquals(
        pairs.stream().map(pair -> pair.file() + " " + pair.row()).sorted().toList(),
        merged.issues().stream()
            .filter(issue -> issue.rule().equals("install-differs"))
            .map(issue -> issue.file() + " " + issue.row())
            .filter(place -> pairs.stream().anyMatch(p -> place.equals(p.file() + " " + p.row())))
            .sorted()
            .toList());
    assertEquals(
        pairs.size(),
        count(merged, "install-differs") - count(SampleRun.sample(), "install-differs"));
    assertEquals(
        2, count(merged, "same-day-visits") - count(SampleRun.sample(), "same-day-visits"));
  }

  private static long count(IssueBook book, String rule) {
    return count(book.issues(), rule);
  }

  private static long count(JobResult result, String rule) {
    return count(result.issues(), rule);
  }

  private static long count(List<DataIssue> issues, String rule) {
    return issues.stream().filter(issue -> issue.rule().equals(rule)).count();
  }

  private Path copyOfSample() throws IOException {
    try (Stream<Path> files = Files.walk(SampleRun.SAMPLE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(SampleRun.SAMPLE.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
    return folder;
  }
}
