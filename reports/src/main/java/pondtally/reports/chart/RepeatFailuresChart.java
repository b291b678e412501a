package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pondtally.reports.chart.StepCurve.Step;
import pondtally.reports.table.Row;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** Mean number of failures of a device by time in service, repeated ones counted. */
final class RepeatFailuresChart {

  private static final String NAME = "repeat-failures";
  private static final int[] HORIZONS = {5, 3, 1};

  private RepeatFailuresChart() {}

  static List<Figure> figures(ChartSource source) {
    String grouping = source.rows("repeat_failures", "pipe").isEmpty() ? "all" : "pipe";
    List<StepCurve> curves = curves(source, grouping);
    if (curves.isEmpty()) {
      return List.of();
    }
    String title = title(source, grouping);
    if (curves.stream().noneMatch(StepCurve::isDrawn)) {
      String reason = Messages.of("common.No-curve-is-drawn-no-group");
      return List.of(Figure.nothingToShow(NAME, title, source, reason));
    }
    double most =
        curves.stream()
            .flatMap(curve -> curve.drawn().stream())
            .mapToDouble(step -> Math.min(step.upper().orElse(step.value()), 2 * step.value()))
            .max()
            .orElse(1);
    CurveFigure form =
        new CurveFigure(
            Messages.of("chart.RepeatFailuresChart.mean-failures-of-a-device"),
            Scale.upTo(0, Math.max(most, 0.1), 4, "0.##"),
            0,
            Messages.of("common.Years-since-installation"),
            false);
    return form.figures(curves, words(source, title, curves));
  }

  private static Figure words(ChartSource source, String title, List<StepCurve> curves) {
    List<String> foot = new ArrayList<>();
    foot.add(
        Messages.of(
            "chart.RepeatFailuresChart.mean-cumulative-function-every-failure-counted",
            Map.of("failureDefinition", source.failureDefinition())));
    if (curves.stream().anyMatch(StepCurve::isCut)) {
      foot.add(Messages.of("chart.RepeatFailuresChart.curves-end-where-fewer-than-5"));
    }
    String figures =
        curves.stream()
            .filter(StepCurve::isDrawn)
            .limit(12)
            .map(RepeatFailuresChart::last)
            .collect(Collectors.joining("; "));
    return new Figure(
        NAME,
        title,
        List.of(devices(curves) + source.cut()),
        List.of(),
        List.of(),
        1,
        foot,
        Messages.of(
            "chart.RepeatFailuresChart.step-curves-by-years-since-installation",
            Map.of("title", title, "figures", figures)));
  }

  private static String devices(List<StepCurve> curves) {
    double devices =
        curves.stream()
            .mapToDouble(
                curve ->
                    curve.steps().stream().mapToDouble(s -> s.atRisk().orElse(0)).max().orElse(0))
            .sum();
    return NumberText.count((long) devices, "devices") + ". ";
  }

  private static String last(StepCurve curve) {
    double end = curve.supportedYears().orElseThrow();
    Step step = curve.at(end).orElseThrow();
    return Messages.of(
        "chart.RepeatFailuresChart.by",
        Map.of(
            "curve",
            curve.label(),
            "ratio",
            new Estimate(step.value(), step.lower(), step.upper()).ratio(),
            "years",
            NumberText.years(end)));
  }

  private static String title(ChartSource source, String grouping) {
    List<StepCurve> all = curves(source, "all");
    for (int years : HORIZONS) {
      for (StepCurve curve : all) {
        if (curve.supportedYears().orElse(0) >= years && curve.at(years).isPresent()) {
          Step step = curve.at(years).get();
          Estimate mean = new Estimate(step.value(), step.lower(), step.upper());
          String inYears =
              Messages.of(
                  "chart.RepeatFailuresChart.times-on-average-in-its-first",
                  Map.of("years", NumberText.years(years)));
          return Messages.of(
              "chart.RepeatFailuresChart.a-device-failed", Map.of("ratio", mean.ratio(inYears)));
        }
      }
    }
    return grouping.equals("all")
        ? Messages.of("chart.RepeatFailuresChart.mean-number-of-failures-of-a")
        : Messages.of(
            "chart.RepeatFailuresChart.mean-number-of-failures-of-a-2",
            Map.of("grouping", GroupText.grouping(grouping)));
  }

  private static List<StepCurve> curves(ChartSource source, String grouping) {
    List<StepCurve> curves = new ArrayList<>();
    source
        .groups("repeat_failures", grouping)
        .forEach((group, rows) -> curves.add(curve(grouping, group, rows)));
    return curves;
  }

  private static StepCurve curve(String grouping, String group, List<Row> rows) {
    List<Step> steps = rows.stream().map(row -> Step.of(row, "mean_failures", 0, 0)).toList();
    return new StepCurve(
        group, GroupText.label(grouping, group), steps, StepCurve.supported(steps));
  }
}
