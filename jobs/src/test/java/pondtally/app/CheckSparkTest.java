package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pondtally.check.IssueBook;

/** Checking alone says what a report of the same folder says. */
class CheckSparkTest {

  @Test
  void issuesAndAccountAreThoseOfTheReport() {
    JobRequest request =
        new JobRequest(
            SampleRun.SAMPLE,
            (int) LocalDate.of(2026, 2, 1).toEpochDay(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            2);
    IssueBook book = Job.check(request);
    JobResult report = SampleRun.sample();
    assertEquals(report.issues(), book.issues());
    assertEquals(report.account(), book.accounts());
  }
}
