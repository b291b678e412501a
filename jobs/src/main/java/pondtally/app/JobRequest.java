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
 * @param scope what the report is about
 */
public record JobRequest(
    Path folder,
    int today,
    OptionalInt periodFrom,
    OptionalInt periodTo,
    int cores,
    Scope scope) {

  /** About the whole program. */
  public JobRequest(
      Path folder, int today, OptionalInt periodFrom, OptionalInt periodTo, int cores) {
    this(folder, today, periodFrom, periodTo, cores, Scope.ALL);
  }
}
