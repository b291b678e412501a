package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;

/**
 * The corner points that draw a survival curve with straight lines: two for each step. A curve
 * stops at the last age with five lives under observation, and a group that never had five has no
 * points. Where failures are known by interval only, the line falls over the interval, since the
 * records do not say where in it the share fell.
 */
public final class CurvePoints {

  private static final Map<String, String> START =
      Map.of("time_days", "0", "survival", "1", "lower", "1", "upper", "1");

  private CurvePoints() {}

  /** Points of one group: columns grouping, group, time_days, survival, lower, upper. */
  public static List<Line> of(TablePackage tables, String grouping, String group) {
    String method = SurvivalMethod.of();
    OptionalDouble end =
        Rows.of(tables, "survival_summary")
            .where("grouping", grouping)
            .where("group", group)
            .where("method", method)
            .first()
            .map(row -> Cells.number(row, "supported_days"))
            .orElse(OptionalDouble.empty());
    List<Line> points = new ArrayList<>();
    if (end.isEmpty()) {
      return points;
    }
    Map<String, String> name = Map.of("grouping", grouping, "group", group);
    Line last = Line.of(START).with(name);
    points.add(last);
    for (Row row : curve(tables, grouping, group, method)) {
      if (Cells.number(row, "time_days").orElse(0) > end.getAsDouble()) {
        break;
      }
      points.add(last.with(Map.of("time_days", start(row))));
      last = Line.of(row);
      points.add(last);
    }
    points.add(last.with(Map.of("time_days", Double.toString(end.getAsDouble()))));
    return points;
  }

  private static List<Row> curve(
      TablePackage tables, String grouping, String group, String method) {
    return Rows.of(tables, "survival_curves")
        .where("grouping", grouping)
        .where("group", group)
        .where("method", method)
        .only(row -> !row.text("survival").isEmpty())
        .list();
  }

  private static String start(Row row) {
    String from = row.text("from_days");
    return from.isEmpty() ? row.text("time_days") : from;
  }
}
