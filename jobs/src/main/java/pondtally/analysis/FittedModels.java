package pondtally.analysis;

/** What is fitted to the totals of the first pass and needs a second for its errors. */
public record FittedModels(HazardAnalysis hazards, IntervalAnalysis intervals) {

  /** Fits everything. */
  public static FittedModels of(ProgramTally totals, AnalysisSettings settings) {
    return new FittedModels(
        HazardAnalysis.of(totals, settings.groupsBelow()),
        IntervalAnalysis.of(totals.lives(), settings));
  }
}
