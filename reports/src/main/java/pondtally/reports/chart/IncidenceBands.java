package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pondtally.reports.chart.StepCurve.Step;
import pondtally.reports.text.Estimate;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/**
 * Causes in the order in which they are stacked: the most frequent lowest, the rest together, and
 * retirement on top.
 *
 * @param names of the bands, lowest first
 * @param curves the causes in each band
 * @param years ages at which anything changes, ending where drawing ends
 */
record IncidenceBands(List<String> names, List<List<StepCurve>> curves, List<Double> years) {

  private static final String RETIRED = "retired";
  private static final int ALONE = 3;
  private static final Look OTHERS = new Look(Look.GRAY, Look.line(1), Look.diamond(3));
  private static final Look RETIREMENT =
      new Look(Look.CONTEXT, Look.line(1), Look.series(4).mark());

  static List<StepCurve> causes(ChartSource source) {
    List<String> causes =
        source.rows("cumulative_incidence", "all").stream()
            .map(row -> row.text("cause"))
            .distinct()
            .toList();
    return causes.stream().map(cause -> curve(source, cause)).toList();
  }

  /**
   * The bands of these causes up to {@code end}, drawn every {@code apart} years where anything
   * changes.
   */
  static IncidenceBands of(List<StepCurve> causes, double end, double apart) {
    List<StepCurve> failures =
        causes.stream()
            .filter(cause -> !cause.group().equals(RETIRED))
            .filter(cause -> value(cause, end) > 0)
            .sorted(
                Comparator.comparingDouble((StepCurve cause) -> -value(cause, end))
                    .thenComparing(StepCurve::group))
            .toList();
    int alone = failures.size() == ALONE + 1 ? ALONE + 1 : Math.min(ALONE, failures.size());
    List<String> names = new ArrayList<>();
    List<List<StepCurve>> curves = new ArrayList<>();
    failures.subList(0, alone).forEach(cause -> add(names, curves, cause.label(), List.of(cause)));
    if (alone < failures.size()) {
      List<StepCurve> rest = failures.subList(alone, failures.size());
      add(names, curves, NumberText.count(rest.size(), "other causes"), rest);
    }
    causes.stream()
        .filter(cause -> cause.group().equals(RETIRED) && value(cause, end) > 0)
        .forEach(
            cause ->
                add(
                    names,
                    curves,
                    Messages.of("chart.IncidenceBands.retired-without-failure"),
                    List.of(cause)));
    return new IncidenceBands(names, curves, years(causes, end, apart));
  }

  /** Upper edge of a band. */
  double upper(int band, double years) {
    return curves.subList(0, band + 1).stream()
        .flatMap(List::stream)
        .mapToDouble(cause -> value(cause, years))
        .sum();
  }

  /** Upper edge of the uppermost band. */
  double top(double years) {
    return names.isEmpty() ? 0 : upper(names.size() - 1, years);
  }

  /** Look of a band. */
  Look look(int band) {
    boolean retired = curves.get(band).get(0).group().equals(RETIRED);
    boolean together = curves.get(band).size() > 1;
    return retired ? RETIREMENT : together ? OTHERS : Look.series(band);
  }

  /** Names with shares; limits where the band is a single cause. */
  List<String> labelsAt(double years) {
    List<String> labels = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      labels.add(names.get(i) + " " + share(curves.get(i), years));
    }
    return labels;
  }

  private static String share(List<StepCurve> causes, double years) {
    if (causes.size() > 1) {
      return NumberText.percent(causes.stream().mapToDouble(c -> value(c, years)).sum());
    }
    Optional<Step> step = causes.get(0).at(years);
    return step.map(s -> new Estimate(s.value(), s.lower(), s.upper()).percent())
        .orElse(NumberText.percent(0))
        .replace(Messages.of("common.likely"), "");
  }

  private static double value(StepCurve cause, double years) {
    return cause.at(years).map(Step::value).orElse(0.0);
  }

  private static void add(
      List<String> names, List<List<StepCurve>> curves, String name, List<StepCurve> band) {
    names.add(name);
    curves.add(band);
  }

  private static List<Double> years(List<StepCurve> causes, double end, double apart) {
    Stream<Double> changes =
        causes.stream()
            .flatMap(cause -> cause.steps().stream())
            .map(Step::years)
            .filter(years -> years < end)
            .map(years -> Math.min(end, apart * Math.ceil(years / apart)));
    return Stream.concat(Stream.concat(Stream.of(0.0), changes), Stream.of(end))
        .sorted()
        .distinct()
        .toList();
  }

  private static StepCurve curve(ChartSource source, String cause) {
    List<Step> steps =
        source.rows("cumulative_incidence", "all").stream()
            .filter(row -> row.text("cause").equals(cause))
            .map(row -> Step.of(row, "incidence", 0, 0))
            .toList();
    return new StepCurve(cause, GroupText.words(cause), steps, StepCurve.supported(steps));
  }
}
