package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import pondtally.history.FailureDating;

/** The survival figures of one simulated program, computed as the job computes them. */
record SimulatedFigures(
    SurvivalAnalysis.SummaryRow productLimit,
    SurvivalAnalysis.SummaryRow interval,
    List<SurvivalAnalysis.SummaryRow> intervalByPipe,
    List<DatingAnalysis.Row> datings,
    List<HazardAnalysis.Row> hazards,
    List<RateAnalysis.Row> rates,
    List<RepeatAnalysis.Row> repeats) {

  private static final int EFFECT_RESAMPLES = 10;

  /**
   * Draws a program of so many sites and runs its analyses.
   *
   * @param resampled whether interval estimates are resampled for their limits, which takes long;
   *     without, they are not among the figures
   */
  static SimulatedFigures of(SimulatedSites kind, int sites, long seed, boolean resampled) {
    SplittableRandom random = new SplittableRandom(seed);
    AnalysisSettings settings = SimulatedProgram.settings(seed, EFFECT_RESAMPLES);
    CostRules costs = new CostRules(SimulatedProgram.prices(), 32, null);
    ProgramTally tally = new ProgramTally(settings);
    List<ClusterPart> parts = new ArrayList<>();
    for (int i = 0; i < sites; i++) {
      SimulatedSites.Drawn site = kind.draw(random);
      parts.add(
          tally.add(SimulatedProgram.view(i, site.watershed(), site.devices(), settings, costs)));
    }
    return of(tally, parts, settings, resampled);
  }

  private static SimulatedFigures of(
      ProgramTally tally, List<ClusterPart> parts, AnalysisSettings settings, boolean resampled) {
    FittedModels models = FittedModels.of(tally, settings);
    SecondPass second = SecondPass.of(tally, models);
    parts.forEach(second::add);
    List<RepeatAnalysis.Row> repeats = new ArrayList<>();
    RepeatAnalysis.rows(tally.repeats(), second, repeats::add);
    // Without limits an analysis has no rows.
    IntervalAnalysis intervals = resampled ? models.intervals().with(second) : models.intervals();
    return new SimulatedFigures(
        SurvivalAnalysis.summaries(tally.lives(), settings).get(0),
        resampled ? intervals.summaries().get(0) : null,
        intervals.summaries().stream().filter(row -> row.grouping().equals("pipe")).toList(),
        intervals.datings().stream().filter(row -> row.group().equals("all")).toList(),
        models.hazards().rows(second),
        RateAnalysis.rows(tally.rates(), settings).stream()
            .filter(row -> row.year().equals("all"))
            .filter(row -> row.group().equals("all") || row.grouping().equals("pipe"))
            .toList(),
        repeats.stream().filter(row -> row.group().equals("all")).toList());
  }

  /** The tests alone. */
  static List<TestAnalysis.Row> tests(
      SimulatedSites kind, int sites, FailureDating dating, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    AnalysisSettings settings = SimulatedProgram.settings(seed, EFFECT_RESAMPLES, dating);
    CostRules costs = new CostRules(SimulatedProgram.prices(), 32, null);
    LifeTally lives = new LifeTally(dating);
    for (int i = 0; i < sites; i++) {
      SimulatedSites.Drawn site = kind.draw(random);
      lives.add(SimulatedProgram.view(i, site.watershed(), site.devices(), settings, costs));
    }
    return TestAnalysis.rows(lives, settings.groupsBelow());
  }

  /** Mean failures at an age in days, from the last step at or before it. */
  RepeatAnalysis.Row repeatAt(double days) {
    RepeatAnalysis.Row last = null;
    for (RepeatAnalysis.Row row : repeats) {
      last = row.timeDays() <= days ? row : last;
    }
    return last;
  }
}
