package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.chart.StepCurve.Step;
import pondtally.reports.table.Row;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** Share of devices that had not failed, by age: all devices, and by pipe type. */
final class SurvivalChart {

  private static final CurveFigure FORM =
      new CurveFigure(
          Messages.of("chart.SurvivalChart.share-that-had-not-failed"),
          Scale.shares(),
          1,
          Messages.of("common.Years-since-installation"),
          true);

  private SurvivalChart() {}

  static List<Figure> figures(ChartSource source) {
    List<Figure> figures = new ArrayList<>();
    figures.addAll(of(source, "all", "survival"));
    figures.addAll(of(source, "pipe", "survival-by-pipe"));
    return figures;
  }

  private static List<Figure> of(ChartSource source, String grouping, String name) {
    List<StepCurve> curves = curves(source, grouping);
    if (curves.isEmpty()) {
      return List.of();
    }
    SurvivalFinding finding = new SurvivalFinding(source, grouping);
    if (curves.stream().noneMatch(StepCurve::isDrawn)) {
      return List.of(
          Figure.nothingToShow(
              name,
              finding.neutralTitle(),
              source,
              Messages.of("common.No-curve-is-drawn-no-group")));
    }
    return FORM.figures(curves, words(source, name, finding, curves));
  }

  private static Figure words(
      ChartSource source, String name, SurvivalFinding finding, List<StepCurve> curves) {
    String title = finding.title();
    return new Figure(
        name,
        title,
        List.of(counts(curves) + " " + source.cut()),
        List.of(),
        List.of(),
        1,
        foot(source, finding, curves),
        Messages.of(
            "chart.SurvivalChart.step-curves-from-0-to-100",
            Map.of("title", title, "figures", finding.figures())));
  }

  private static String counts(List<StepCurve> curves) {
    long failed = curves.stream().flatMap(c -> c.steps().stream()).mapToLong(Step::events).sum();
    long censored =
        curves.stream().flatMap(c -> c.steps().stream()).mapToLong(Step::censored).sum();
    return "%s, %s."
        .formatted(
            NumberText.count(failed + censored, "service lives"),
            NumberText.count(failed, "first failures"));
  }

  private static List<String> foot(
      ChartSource source, SurvivalFinding finding, List<StepCurve> curves) {
    List<String> foot = new ArrayList<>();
    foot.add(
        Messages.of(
            "chart.SurvivalChart.product-limit-estimate-to-the-first",
            Map.of("failureDefinition", source.failureDefinition())));
    foot.add(Messages.of("chart.SurvivalChart.at-risk-under-observation-just-before"));
    if (curves.stream().anyMatch(StepCurve::isCut)) {
      foot.add(Messages.of("chart.SurvivalChart.curves-end-where-fewer-than-5"));
    }
    foot.addAll(finding.undated());
    if (curves.size() > 1) {
      foot.add(Messages.of("chart.SurvivalChart.crews-sites-and-years-differ-between"));
    }
    return foot;
  }

  /** Product-limit curves, because only they have numbers at risk at every age. */
  private static List<StepCurve> curves(ChartSource source, String grouping) {
    Map<String, Double> supportedDays = new HashMap<>();
    for (Row row : productLimit(source.rows("survival_summary", grouping))) {
      row.number("supported_days").ifPresent(days -> supportedDays.put(row.text("group"), days));
    }
    List<StepCurve> curves = new ArrayList<>();
    source
        .groups("survival_curves", grouping)
        .forEach(
            (group, rows) -> {
              List<Row> own = productLimit(rows);
              if (!own.isEmpty()) {
                curves.add(curve(grouping, group, own, supportedDays));
              }
            });
    return curves;
  }

  private static List<Row> productLimit(List<Row> rows) {
    return rows.stream().filter(row -> row.text("method").equals("product-limit")).toList();
  }

  private static StepCurve curve(
      String grouping, String group, List<Row> rows, Map<String, Double> supportedDays) {
    List<Step> steps = rows.stream().map(SurvivalChart::step).toList();
    Double days = supportedDays.get(group);
    OptionalDouble end =
        days == null
            ? StepCurve.supported(steps)
            : OptionalDouble.of(days / StepCurve.DAYS_PER_YEAR);
    return new StepCurve(group, GroupText.label(grouping, group), steps, end);
  }

  private static Step step(Row row) {
    return Step.of(
        row,
        "survival",
        (long) row.number("events").orElse(0),
        (long) row.number("censored").orElse(0));
  }
}
