package pondtally.app;

import java.nio.file.Path;
import java.util.OptionalInt;
import pondtally.analysis.Scope;

/**
 * What a run is asked to do.
 *
 * @param folder the program folder
 * @param today day of the run, days since 1970-01-01
 * @param periodFrom first day of the reporting period, instead of what {@code program.yaml} says
 * @param periodTo last day of the reporting period, instead of what {@code program.yaml} says
 * @param cores processor cores to use
 * @param longTables where tables go that are too long for memory
 * @param scope what the report is about
 */
public record JobRequest(
    Path folder,
    int today,
    OptionalInt periodFrom,
    OptionalInt periodTo,
    int cores,
    LongTables longTables,
    Scope scope) {

  /** A run about the whole program that writes no long tables. */
  public JobRequest(
      Path folder, int today, OptionalInt periodFrom, OptionalInt periodTo, int cores) {
    this(folder, today, periodFrom, periodTo, cores, LongTables.NONE, Scope.ALL);
  }

  /** The same with long tables. */
  public JobRequest with(LongTables wanted) {
    return new JobRequest(folder, today, periodFrom, periodTo, cores, wanted, scope);
  }

  /** The same about a part of the program. */
  public JobRequest about(Scope part) {
    return new JobRequest(folder, today, periodFrom, periodTo, cores, longTables, part);
  }
}
