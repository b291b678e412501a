package pondtally.sample;

import java.time.LocalDate;

/**
 * A device of the invented program, as first installed.
 *
 * @param trackedFrom first day the program followed it, null for the install date
 * @param lastFollowUp no visit later than this
 * @param toSpecification the truth, recorded or not
 * @param costless its partner kept no cost of any kind
 */
record Device(
    String id,
    Site site,
    SampleTruth.Pipe pipe,
    String kind,
    LocalDate installedOn,
    LocalDate trackedFrom,
    LocalDate lastFollowUp,
    boolean toSpecification,
    String crew,
    boolean costless) {

  double hazard() {
    return SampleTruth.hazard(site.watershed(), toSpecification);
  }

  LocalDate entry() {
    return trackedFrom == null ? installedOn : trackedFrom;
  }
}
