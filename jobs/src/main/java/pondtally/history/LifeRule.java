package pondtally.history;

import java.util.List;
import pondtally.record.Install;
import pondtally.record.RetiredReason;

/**
 * A service life as it is analyzed: time is age since its opening, the event its first failure
 * after entry. Without failure it is censored at its last visit, at the visit that replaced it or
 * on the day it was retired; nobody saw the device after that. Source for right censoring at the
 * end of follow-up: Kaplan and Meier 1958; the rest common practice, no source.
 */
final class LifeRule {

  /**
   * A life with what belongs to it.
   *
   * @param failures after entry, in order
   * @param knownGoodOn last day the device was known not failed, half days
   * @param verified from entry to its last visit
   * @param functional the part of it in which the device was not failed
   */
  record Observed(
      Life life,
      List<Failure> failures,
      int knownGoodOn,
      Stretches verified,
      Stretches functional) {}

  private LifeRule() {}

  /**
   * @param openedOn age 0, half days
   * @param first the device's first install record
   */
  static Observed observe(
      int number, Service service, int openedOn, Install first, FailureDefinition failure) {
    EntryRule.Entry entry = EntryRule.of(service, openedOn, first, failure);
    List<Inspection> after = service.findings().subList(entry.next(), service.findings().size());
    FailureRule.Course course = FailureRule.of(number, entry.on(), after, failure);
    int leftOn = entry.made() ? leftOn(service, entry.on(), course) : entry.on();
    Failure firstFailure = course.failures().isEmpty() ? null : course.failures().get(0);
    RetiredReason competing =
        firstFailure == null && leftOn > entry.on() ? EndRule.competing(service) : null;
    Life life =
        new Life(number, service.design(), openedOn, entry.on(), firstFailure, leftOn, competing);
    Stretches verified = verified(service, entry);
    Stretches functional = FunctionRule.functional(verified, course.failures());
    return new Observed(life, course.failures(), course.knownGoodOn(), verified, functional);
  }

  private static Stretches verified(Service service, EntryRule.Entry entry) {
    return entry.made() && service.lastVisitOn() != null
        ? Stretches.between(entry.on(), service.lastVisitOn())
        : Stretches.NONE;
  }

  /** Last visit or retirement, and never before the failures found are past. */
  private static int leftOn(Service service, int entryOn, FailureRule.Course course) {
    int leftOn = Math.max(entryOn, course.knownGoodOn());
    if (service.lastVisitOn() != null) {
      leftOn = Math.max(leftOn, service.lastVisitOn());
    }
    if (service.endedOn() != null) {
      leftOn = Math.max(leftOn, service.endedOn());
    }
    if (!course.failures().isEmpty()) {
      leftOn = Math.max(leftOn, course.failures().get(course.failures().size() - 1).foundOn());
    }
    return leftOn;
  }
}
