package pondtally.app;

import java.nio.file.Path;
import java.util.OptionalInt;

/**
 * What a run is asked to do.
 *
 * @param folder the program folder
 * @param today day of the run, days since 1970-01-01
 * @param periodFrom first day of the reporting period, instead of what {@code program.yaml} says
 * @param periodTo last day of the reporting period, instead of what {@code program.yaml} says
 * @param cores processor cores to use
 * @param longTables where tables go that are too long for memory
 */
public record JobRequest(
    Path folder,
    int today,
    OptionalInt periodFrom,
    OptionalInt periodTo,
    int cores,
    LongTables longTables) {

  /** A run that writes no long tables. */
  public JobRequest(
      Path folder, int today, OptionalInt periodFrom, OptionalInt periodTo, int cores) {
    this(folder, today, periodFrom, periodTo, cores, LongTables.NONE);
  }

  /** The same with long tables. */
  public JobRequest with(LongTables wanted) {
    return new JobRequest(folder, today, periodFrom, periodTo, cores, wanted);
  }
}
