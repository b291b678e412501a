package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.view.CurvePoints;
import pondtally.reports.view.Groups;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;
import pondtally.reports.view.Setting;
import pondtally.reports.view.SurvivalMethod;

/** Survival: a line for each group, its curves, and the points that draw them. */
final class SurvivalSheets {

  private static final String POINTS = Messages.of("workbook.SurvivalSheets.survival-points");

  /** More lines than this cannot be told apart. */
  private static final int MOST_LINES = 4;

  private SurvivalSheets() {}

  static void summary(Book book, TablePackage tables) {
    String method = SurvivalMethod.of();
    List<Line> lines = Rows.of(tables, "survival_summary").where("method", method).lines();
    Columns columns =
        Columns.of(tables, "survival_summary")
            .add("grouping", "group")
            .add("devices", "lives", "failures")
            .heading(Messages.of("common.First-failures"))
            .add("device_years");
    horizons(columns, lines, "")
        .add("median_years", "median_lower", "median_upper")
        .add("mean_life_years", "mean_life_std_error", "mean_life_horizon_years")
        .add("supported_days");
    book.add(
        TableSheet.of(
                Messages.of("workbook.SurvivalSheets.survival"),
                Messages.of("common.How-long-devices-last"),
                List.of(
                    Messages.of(
                        "workbook.SurvivalSheets.share-of-devices-that-have-not",
                        Map.of("method", words(method))),
                    Messages.of("workbook.SurvivalSheets.figures-stop-at-the-last-age")),
                columns,
                lines)
            .withKeyColumns(2)
            .withCharts(charts(tables)));
  }

  /** The estimate that gives failures no day, where the run made it. */
  static void undated(Book book, TablePackage tables) {
    List<Line> lines = Rows.of(tables, "survival_summary").where("method", "interval").lines();
    if (lines.isEmpty()) {
      return;
    }
    Columns columns =
        Columns.of(tables, "survival_summary")
            .add("grouping", "group")
            .add("devices", "lives", "failures")
            .heading(Messages.of("common.First-failures"));
    horizons(columns, lines, "")
        .add("median_years", "median_lower", "median_upper")
        .add("mean_life_years", "mean_life_std_error", "mean_life_horizon_years")
        .add("supported_days", "rounded_to_days");
    book.add(
        TableSheet.of(
                Messages.of("workbook.SurvivalSheets.survival-by-visits"),
                Messages.of("workbook.SurvivalSheets.how-long-devices-last-estimated-from"),
                List.of(
                    Messages.of(
                        "workbook.SurvivalSheets.failures-are-not-given-a-day",
                        Map.of("interval", words("interval"))),
                    Messages.of("common.Limits-are-approximate-from-200-resamples")),
                columns,
                lines)
            .withKeyColumns(2));
  }

  /** Adds the ages that any of the groups reaches. */
  static Columns horizons(Columns columns, List<Line> lines, String prefix) {
    for (int years : new int[] {1, 3, 5, 10}) {
      String name = "survival_" + years + "y";
      if (lines.stream().anyMatch(line -> line.number(prefix + name).isPresent())) {
        columns.add(name, name + "_lower", name + "_upper");
      }
    }
    return columns;
  }

  private static String words(String method) {
    return method.equals("interval")
        ? Messages.of("workbook.SurvivalSheets.estimate-from-the-intervals-between-visits")
        : Messages.of("workbook.SurvivalSheets.product-limit-estimate-kaplan-and-meier");
  }

  static void points(Book book, TablePackage tables) {
    List<Line> lines = new ArrayList<>();
    curves(tables).values().forEach(lines::addAll);
    Columns columns =
        Columns.of(tables, "survival_curves")
            .add("grouping", "group", "time_days")
            .heading(Messages.of("workbook.SurvivalSheets.age-days"))
            .add("years", Messages.of("workbook.SurvivalSheets.age-years"), Format.TWO)
            .live(
                Formula.of(refs -> refs.cell("time_days") + "/Days_per_year", line -> years(line)))
            .add("survival")
            .heading(Messages.of("workbook.SurvivalSheets.share-not-failed"))
            .format(Format.SHARE)
            .add("lower")
            .format(Format.SHARE)
            .add("upper")
            .format(Format.SHARE);
    book.add(
        TableSheet.of(
                POINTS,
                Messages.of("workbook.SurvivalSheets.points-that-draw-the-survival-curves"),
                List.of(Messages.of("workbook.SurvivalSheets.two-points-a-step-a-curve")),
                columns,
                lines)
            .withKeyColumns(2));
  }

  private static java.util.OptionalDouble years(Line line) {
    return java.util.OptionalDouble.of(line.number("time_days").orElse(0) / Setting.DAYS_PER_YEAR);
  }

  /** All devices first, then the pipe types with most lives. */
  private static Map<String, List<Line>> curves(TablePackage tables) {
    Map<String, List<Line>> curves = new LinkedHashMap<>();
    put(curves, Messages.of("common.all-devices"), CurvePoints.of(tables, "all", "all"));
    Rows.of(tables, "survival_summary")
        .where("grouping", "pipe")
        .where("method", SurvivalMethod.of())
        .lines()
        .stream()
        .filter(line -> !Groups.isSmall(line, tables))
        .sorted(Comparator.comparingDouble(line -> -line.number("lives").orElse(0)))
        .limit(MOST_LINES)
        .forEach(
            line ->
                put(
                    curves,
                    line.text("group"),
                    CurvePoints.of(tables, "pipe", line.text("group"))));
    return curves;
  }

  private static void put(Map<String, List<Line>> curves, String name, List<Line> points) {
    if (!points.isEmpty()) {
      curves.put(name, points);
    }
  }

  private static ChartPlan[] charts(TablePackage tables) {
    List<ChartPlan.Series> all = new ArrayList<>();
    List<ChartPlan.Series> pipes = new ArrayList<>();
    int from = 0;
    for (Map.Entry<String, List<Line>> curve : curves(tables).entrySet()) {
      int count = curve.getValue().size();
      if (curve.getKey().equals(GroupText.label("all", "all"))) {
        all.add(series("estimate", "survival", from, count));
        // A spreadsheet draws what is not known as zero, so limits are drawn whole or not at all.
        if (ChartPlan.leading(curve.getValue(), "lower", count) == count
            && ChartPlan.leading(curve.getValue(), "upper", count) == count) {
          all.add(
              series(Messages.of("workbook.SurvivalSheets.lower-limit-95"), "lower", from, count)
                  .thin());
          all.add(
              series(Messages.of("workbook.SurvivalSheets.upper-limit-95"), "upper", from, count)
                  .thin());
        }
      } else {
        pipes.add(series(curve.getKey(), "survival", from, count));
      }
      from += count;
    }
    List<ChartPlan> charts = new ArrayList<>();
    if (!all.isEmpty()) {
      charts.add(plan(Messages.of("workbook.SurvivalSheets.share-of-devices-not-failed-by"), all));
    }
    if (!pipes.isEmpty()) {
      charts.add(plan(Messages.of("workbook.SurvivalSheets.share-not-failed-by-pipe-type"), pipes));
    }
    return charts.toArray(ChartPlan[]::new);
  }

  private static ChartPlan.Series series(String name, String column, int from, int count) {
    return ChartPlan.Series.of(name, "years", column, count).on(POINTS, from);
  }

  private static ChartPlan plan(String title, List<ChartPlan.Series> series) {
    return new ChartPlan(
        title,
        Messages.of(
            "workbook.SurvivalSheets.lines-end-where-fewer-than-five", Map.of("title", title)),
        ChartPlan.Kind.LINES,
        Messages.of("workbook.SurvivalSheets.years-since-installation-or-replacement"),
        Messages.of("workbook.SurvivalSheets.share-not-failed"),
        "0%",
        series);
  }
}
