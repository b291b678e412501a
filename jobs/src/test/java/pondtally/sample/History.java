package pondtally.sample;

import java.time.LocalDate;
import java.util.List;

/**
 * What happened to a device and who saw it.
 *
 * @param retiredOn the partner's own date of the end, null where there is none or only a visit
 *     tells
 * @param lives each service life with its true first failure
 * @param failsOn when it fails next, or failed, after the last visit: nobody has seen it
 */
record History(
    Device device,
    List<Visit> visits,
    LocalDate retiredOn,
    String retiredReason,
    List<Life> lives,
    LocalDate failsOn) {

  /**
   * A service life as drawn.
   *
   * @param failureAgeDays true age at first failure, whether or not anybody lived to see it
   */
  record Life(
      int number,
      SampleTruth.Pipe pipe,
      LocalDate startedOn,
      double failureAgeDays,
      String cause) {}
}
