package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.reports.chart.StepCurve.Step;
import pondtally.reports.table.Row;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.NumberText;

/** Share of devices that had not failed, by age: all devices, and by pipe type. */
final class SurvivalChart {

  private static final CurveFigure FORM =
      new CurveFigure(
          "Share that had not failed", Scale.shares(), 1, "Years since installation", true);

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
              "No curve is drawn: no group ever had 5 devices under observation at one age."));
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
        title + ". Step curves from 0 to 100% by years since installation. " + finding.figures());
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
        "Product-limit estimate to the first failure of each service life (a replacement opens a new"
            + " life); shaded: 95% limits. "
            + source.failureDefinition());
    foot.add(
        "At risk: under observation just before that age. Censored: observation had ended without"
            + " failure. Together they make up all lives at every age.");
    if (curves.stream().anyMatch(StepCurve::isCut)) {
      foot.add("Curves end where fewer than 5 remain at risk; the numbers below go on.");
    }
    foot.addAll(finding.undated());
    if (curves.size() > 1) {
      foot.add(
          "Crews, sites and years differ between pipe types: a difference need not be the pipe's.");
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
