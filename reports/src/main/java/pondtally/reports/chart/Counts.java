package pondtally.reports.chart;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pondtally.reports.chart.StepCurve.Step;

/**
 * How many were at risk, had failed and were censored at the shown ages. At every age the four add
 * up to all (form after Morris et al. 2019).
 *
 * @param years the shown ages
 * @param atRisk under observation just before that age
 * @param failed before that age
 * @param censored before that age
 * @param notYet followed only from a later age on
 */
record Counts(
    List<Double> years,
    List<Long> atRisk,
    List<Long> failed,
    List<Long> censored,
    List<Long> notYet) {

  static Counts of(StepCurve curve, List<Double> years) {
    List<Step> steps = curve.steps();
    long all = steps.stream().mapToLong(step -> step.events() + step.censored()).sum();
    List<Long> atRisk = years.stream().map(year -> atRisk(steps, year)).toList();
    List<Long> failed =
        years.stream().map(year -> before(steps, year).mapToLong(Step::events).sum()).toList();
    List<Long> censored =
        years.stream().map(year -> before(steps, year).mapToLong(Step::censored).sum()).toList();
    List<Long> notYet =
        IntStream.range(0, years.size())
            .mapToObj(i -> all - atRisk.get(i) - failed.get(i) - censored.get(i))
            .toList();
    return new Counts(years, atRisk, failed, censored, notYet);
  }

  boolean hasLateEntry() {
    return notYet.stream().anyMatch(count -> count != 0);
  }

  long most() {
    return atRisk.stream().mapToLong(Long::longValue).max().orElse(0);
  }

  private static long atRisk(List<Step> steps, double year) {
    return steps.stream()
        .filter(step -> step.years() >= year)
        .findFirst()
        .map(step -> (long) step.atRisk().orElse(0))
        .orElse(0L);
  }

  private static Stream<Step> before(List<Step> steps, double year) {
    return steps.stream().filter(step -> step.years() < year);
  }
}
