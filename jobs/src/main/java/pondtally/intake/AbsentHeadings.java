package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import pondtally.check.Severity;

/** Tells of headings that {@code columns.yaml} names and a sheet has not. */
final class AbsentHeadings {

  private AbsentHeadings() {}

  /** One notice for each, unless another heading stands for the same field. */
  static void report(Headings headings, Set<String> bound, RowJudge judge) {
    for (NamedColumn named : headings.map().columns()) {
      boolean isMissed = !named.field().isEmpty() && !bound.contains(named.field());
      if (isMissed && named.place() < 0) {
        report(named, headings.row(), judge);
      }
    }
  }

  /** One notice for each column that is named by its place, beyond the last that any row has. */
  static void reportPlaces(SheetMap map, int widest, RowJudge judge) {
    for (NamedColumn named : map.columns()) {
      if (!named.field().isEmpty() && named.place() >= widest) {
        judge.aboutSheet(
            named.field(),
            named.heading(),
            "",
            Severity.NOTICE,
            IntakeRule.MAPPED_HEADING_ABSENT,
            "columns.yaml reads %s as %s, and no row here reaches beyond column %s. Correct columns.yaml."
                .formatted(named.heading(), named.field(), ColumnLetters.of(widest - 1)),
            "");
      }
    }
  }

  private static void report(NamedColumn named, RawRow row, RowJudge judge) {
    List<String> there = new ArrayList<>();
    for (int i = 0; i < row.width; i++) {
      String heading = Blank.clean(row.cell(i));
      if (!heading.isEmpty() && there.size() < 60) {
        there.add(heading);
      }
    }
    judge.aboutSheet(
        named.field(),
        named.heading(),
        "",
        Severity.NOTICE,
        IntakeRule.MAPPED_HEADING_ABSENT,
        "columns.yaml reads %s as %s, and row %s has no such heading. Correct columns.yaml, or the heading."
            .formatted(Shown.value(named.heading()), named.field(), row.number),
        nearest(named.heading(), there));
  }

  private static String nearest(String heading, List<String> there) {
    List<String> keys =
        there.stream().map(text -> NamedColumn.key(text).replaceAll("[ _]+", "-")).toList();
    int at = keys.indexOf(Likeness.nearest(heading, keys));
    return at < 0 ? "" : there.get(at);
  }
}
