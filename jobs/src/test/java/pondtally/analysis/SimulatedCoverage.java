package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import pondtally.history.FailureDating;

/**
 * How often limits cover and tests reject over many simulated programs. A figure that a program
 * does not state (fewer than five at risk) is not asked; a limit that is not reached is taken for
 * no bound on that side.
 */
final class SimulatedCoverage {

  private static final double[] YEARS = {1, 3, 5};
  private static final double SIZE = 0.05;

  /** One answer: whether limits covered, or a test rejected; and by how much the figure is off. */
  private record Answer(String what, boolean yes, double error) {}

  /** Answers to one question. */
  static final class Share {
    private int yes;
    private int asked;
    private double errors;

    double percent() {
      return 100.0 * yes / asked;
    }

    int asked() {
      return asked;
    }

    /** Mean of the figure less the truth. */
    double meanError() {
      return errors / asked;
    }

    /** Monte Carlo standard error of {@link #percent}. */
    double errorOfPercent() {
      return 100 * Math.sqrt((double) yes / asked * (asked - yes) / asked / asked);
    }

    @Override
    public String toString() {
      return String.format(Locale.ROOT, "%6.2f ± %.2f  (%d)", percent(), errorOfPercent(), asked);
    }
  }

  private final SimulatedSites kind;
  private final SimulatedTruth truth;

  private SimulatedCoverage(SimulatedSites kind, SimulatedTruth truth) {
    this.kind = kind;
    this.truth = truth;
  }

  /** Coverage over programs of so many sites. */
  static Map<String, Share> coverage(
      SimulatedSites kind, int programs, int sites, long seed, boolean resampled) {
    SimulatedCoverage asked =
        new SimulatedCoverage(kind, SimulatedTruth.of(kind, 400_000, seed - 1));
    return counted(
        programs,
        p -> asked.answers(SimulatedFigures.of(kind, sites, seed + 7919L * p, resampled)));
  }

  /** How often tests find a difference at the 5 per cent level where there is none. */
  static Map<String, Share> rejections(FailureDating dating, int programs, int sites, long seed) {
    return counted(
        programs,
        p ->
            rejected(
                SimulatedFigures.tests(SimulatedSites.ALIKE, sites, dating, seed + 7919L * p)));
  }

  private static Map<String, Share> counted(int programs, IntFunction<List<Answer>> of) {
    List<List<Answer>> all = IntStream.range(0, programs).parallel().mapToObj(of).toList();
    Map<String, Share> shares = new TreeMap<>();
    for (List<Answer> answers : all) {
      for (Answer answer : answers) {
        Share share = shares.computeIfAbsent(answer.what, k -> new Share());
        share.asked++;
        share.yes += answer.yes ? 1 : 0;
        share.errors += answer.error;
      }
    }
    return shares;
  }

  private static List<Answer> rejected(List<TestAnalysis.Row> tests) {
    List<Answer> answers = new ArrayList<>();
    for (TestAnalysis.Row row : tests) {
      if (row.pValue() != null && row.groupA() == null) {
        String what =
            row.test()
                + ", "
                + row.grouping()
                + (row.strata() == null ? "" : " by " + row.strata());
        answers.add(new Answer(what, row.pValue() < SIZE, 0));
      }
    }
    return answers;
  }

  private List<Answer> answers(SimulatedFigures figures) {
    List<Answer> answers = new ArrayList<>();
    addCurve(answers, "product-limit", figures.productLimit(), true);
    if (figures.interval() != null) {
      addCurve(answers, "interval", figures.interval(), false);
    }
    for (int pipe = 0; pipe < figures.intervalByPipe().size(); pipe++) {
      SurvivalAnalysis.SummaryRow row = figures.intervalByPipe().get(pipe);
      String what = "interval curve of one pipe type ";
      double oneYear = kind.working(pipe, Years.DAYS);
      double threeYears = kind.working(pipe, 3 * Years.DAYS);
      add(
          answers,
          what + "1 y",
          row.survival1y(),
          row.survival1yLower(),
          row.survival1yUpper(),
          oneYear);
      add(
          answers,
          what + "3 y",
          row.survival3y(),
          row.survival3yLower(),
          row.survival3yUpper(),
          threeYears);
    }
    for (DatingAnalysis.Row row : figures.datings()) {
      add(
          answers,
          "life itself, " + row.dating() + " " + row.years().intValue() + " y",
          row.survival(),
          row.lower(),
          row.upper(),
          kind.working(row.years() * Years.DAYS));
    }
    addHazards(answers, figures);
    for (RateAnalysis.Row rate : figures.rates()) {
      add(
          answers,
          rate.group().equals("all") ? "rate, all pipe types" : "rate, one pipe type",
          rate.per100DeviceYears(),
          rate.lower(),
          rate.upper(),
          truth.per100DeviceYears(rate.group()));
    }
    for (double years : YEARS) {
      RepeatAnalysis.Row row = figures.repeatAt(years * Years.DAYS);
      if (row != null && row.lower() != null) {
        add(
            answers,
            "mean cumulative " + (int) years + " y",
            row.meanFailures(),
            row.lower(),
            row.upper(),
            truth.meanFailures(years * Years.DAYS));
      }
    }
    return answers;
  }

  /** Against what the dated curve tends to, or for the interval estimate against life itself. */
  private void addCurve(
      List<Answer> answers, String method, SurvivalAnalysis.SummaryRow row, boolean dated) {
    Double[][] cells = {
      {row.survival1y(), row.survival1yLower(), row.survival1yUpper()},
      {row.survival3y(), row.survival3yLower(), row.survival3yUpper()},
      {row.survival5y(), row.survival5yLower(), row.survival5yUpper()}
    };
    for (int i = 0; i < YEARS.length; i++) {
      double days = YEARS[i] * Years.DAYS;
      add(
          answers,
          method + " curve " + (int) YEARS[i] + " y",
          cells[i][0],
          cells[i][1],
          cells[i][2],
          dated ? truth.notFound(days) : kind.working(days));
    }
    if (row.medianLower() != null) {
      double median = (dated ? truth.medianDays() : kind.medianDays()) / Years.DAYS;
      Double upper = row.medianUpper() == null ? Double.POSITIVE_INFINITY : row.medianUpper();
      double figure = row.medianYears() == null ? median : row.medianYears();
      add(answers, method + " median", figure, row.medianLower(), upper, median);
    }
  }

  private void addHazards(List<Answer> answers, SimulatedFigures figures) {
    for (HazardAnalysis.Row row : figures.hazards()) {
      if (row.model().startsWith("pipe") && row.hazardRatio() != null) {
        double ratio = truth.hazardRatio(row.level(), row.reference());
        add(
            answers,
            "hazard ratio, " + row.model(),
            row.hazardRatio(),
            row.lower(),
            row.upper(),
            ratio);
        double spread = Math.exp(1.959963984540054 * row.modelLogStdError());
        add(
            answers,
            "hazard ratio, " + row.model() + ", errors as if independent",
            row.hazardRatio(),
            row.hazardRatio() / spread,
            row.hazardRatio() * spread,
            ratio);
      }
    }
  }

  private static void add(
      List<Answer> answers, String what, Double figure, Double lower, Double upper, double truth) {
    if (figure != null && lower != null && upper != null) {
      answers.add(new Answer(what, lower <= truth && truth <= upper, figure - truth));
    }
  }
}
