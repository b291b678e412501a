package pondtally.reports.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import pondtally.reports.table.RunFolder;

/**
 * A figure that was published and differs today.
 *
 * @param published the year under which it was published
 * @param series {@code restated}: a figure of that year, which was over; {@code to-date}: a figure
 *     of the whole program that goes on with the records
 */
public record Restated(
    Integer published,
    String series,
    String table,
    String grouping,
    String group,
    String row,
    String column,
    String unit,
    String kind,
    Double before,
    Double after,
    Double difference,
    Double relative,
    String beforeText,
    String afterText,
    String sources,
    String why) {

  private static final String OF_THE_YEAR = "restated";
  private static final String TO_DATE = "to-date";

  /** Lists of names, which change by their nature. */
  private static final Set<String> NAMES = Set.of("funding", "funder_shares", "completeness");

  /** What was published for a year and differs today. */
  public static List<Restated> of(int year, RunFolder published, RunFolder today) {
    List<Restated> all = new ArrayList<>();
    for (FigureChange change : Comparison.of(published, today).figures()) {
      String series = series(change, year);
      if (series != null && !NAMES.contains(change.table()) && !change.grouping().equals("crew")) {
        all.add(of(year, series, change));
      }
    }
    return all;
  }

  /** Null where the figure is neither of that year nor of the whole program to date. */
  private static String series(FigureChange change, int year) {
    List<String> key = List.of(change.row().split("; ", -1));
    if (key.contains("year=" + year)) {
      return OF_THE_YEAR;
    }
    boolean isToDate =
        key.stream().noneMatch(k -> k.startsWith("year=")) || key.contains("year=all");
    boolean isChanged = change.kind().equals(FigureChange.CHANGED);
    return isToDate && isChanged && change.grouping().equals("all") ? TO_DATE : null;
  }

  private static Restated of(int year, String series, FigureChange c) {
    return new Restated(
        year,
        series,
        c.table(),
        c.grouping(),
        c.group(),
        c.row(),
        c.column(),
        c.unit(),
        c.kind(),
        c.before(),
        c.after(),
        c.difference(),
        c.relative(),
        c.beforeText(),
        c.afterText(),
        c.sources(),
        c.why());
  }
}
