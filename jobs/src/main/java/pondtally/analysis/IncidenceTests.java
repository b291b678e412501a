package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import pondtally.analysis.GroupKey.Grouping;
import pondtally.record.Cause;
import pondtally.stats.CountedLives;
import pondtally.stats.GrayCounts;
import pondtally.stats.GrayTest;
import pondtally.stats.HazardTest;
import pondtally.stats.Holm;
import pondtally.stats.RiskTable;

/**
 * Whether pipe types differ in how many of them fail by a given cause, or are retired, when the
 * other ends compete (Gray 1988); adjusted for the number of causes (Holm 1979). The test has no
 * room for lives that were followed only from a later age: they are left out and counted.
 */
final class IncidenceTests {

  private static final int FEW = 5;

  private IncidenceTests() {}

  /** The test of one cause, and what must be known to read it. */
  private record Tested(String name, GrayTest test, String note) {
    OptionalDouble p() {
      return test.test().isPresent()
          ? OptionalDouble.of(test.test().get().pValue())
          : OptionalDouble.empty();
    }

    TestAnalysis.Row row(OptionalDouble adjusted) {
      HazardTest result = test.test().orElse(null);
      return new TestAnalysis.Row(
          name,
          Grouping.PIPE.code(),
          null,
          null,
          null,
          result == null ? null : (Double) result.statistic(),
          result == null ? null : (Integer) result.degreesOfFreedom(),
          Cells.of(p()),
          Cells.of(adjusted),
          note);
    }
  }

  /** A test for each cause that occurred among pipe types that may be compared. */
  static List<TestAnalysis.Row> rows(LifeTally tally, int groupsBelow) {
    List<GroupKey> pipes = Comparisons.groups(tally, Grouping.PIPE, groupsBelow);
    List<Tested> tests = new ArrayList<>();
    for (int outcome = 1; outcome <= LifeTally.RETIRED && pipes.size() > 1; outcome++) {
      int kind = outcome;
      if (sum(pipes, pipe -> tally.fromNew(pipe).events(kind)) > 0) {
        tests.add(test(tally, pipes, kind));
      }
    }
    List<OptionalDouble> adjusted = Holm.adjust(tests.stream().map(Tested::p).toList());
    List<TestAnalysis.Row> rows = new ArrayList<>();
    for (int i = 0; i < tests.size(); i++) {
      rows.add(tests.get(i).row(adjusted.get(i)));
    }
    return rows;
  }

  private static Tested test(LifeTally tally, List<GroupKey> pipes, int kind) {
    GrayCounts counts = GrayCounts.empty();
    pipes.forEach(pipe -> add(counts, pipe.group(), tally.fromNew(pipe), kind));
    String cause =
        kind == LifeTally.RETIRED ? IncidenceAnalysis.RETIRED : Cause.values()[kind - 1].code();
    return new Tested("gray " + cause, GrayTest.of(counts), note(tally, pipes, kind));
  }

  private static void add(GrayCounts counts, String group, CountedLives lives, int kind) {
    int[] all = IntStream.rangeClosed(1, LifeTally.RETIRED).toArray();
    int[] others = IntStream.of(all).filter(other -> other != kind).toArray();
    addEvents(counts, group, lives.eventsOf(kind), GrayCounts.End.EVENT);
    addEvents(counts, group, lives.eventsOf(others), GrayCounts.End.COMPETING);
    RiskTable any = lives.eventsOf(all);
    for (int row = 0; row < any.rows(); row++) {
      counts.add("", group, any.time(row), GrayCounts.End.CENSORED, any.censored(row));
    }
  }

  private static void addEvents(
      GrayCounts counts, String group, RiskTable table, GrayCounts.End end) {
    for (int row = 0; row < table.rows(); row++) {
      counts.add("", group, table.time(row), end, table.events(row));
    }
  }

  private static String note(LifeTally tally, List<GroupKey> pipes, int kind) {
    long late = sum(pipes, pipe -> tally.lives().get(pipe).lives() - tally.fromNew(pipe).lives());
    long events = sum(pipes, pipe -> tally.fromNew(pipe).events(kind));
    List<String> notes = new ArrayList<>();
    if (late > 0) {
      notes.add(late + " lives followed only from a later age are left out");
    }
    if (events < (long) FEW * pipes.size()) {
      notes.add("fewer than " + FEW + " a pipe type: the p value is rough");
    }
    return notes.isEmpty() ? null : String.join("; ", notes);
  }

  private static long sum(List<GroupKey> pipes, ToLongFunction<GroupKey> value) {
    return pipes.stream().mapToLong(value).sum();
  }
}
