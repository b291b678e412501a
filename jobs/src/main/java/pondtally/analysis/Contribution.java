package pondtally.analysis;

import pondtally.record.Origin;

/**
 * What one row of the partners' files adds to one figure.
 *
 * @param subject the figure; see {@link ContributionSubject}
 * @param siteId null where it belongs to no site
 * @param deviceId null where it belongs to a site, a pond or a property rather than to one device
 * @param amount in the subject's unit
 * @param origin the row
 * @param day the day of a payment, days since 1970-01-01, from which its budget period follows; 0
 *     for every other subject
 * @param year the year it counts in; {@link Years#ALL} for what stands at the end of the period
 * @param part cause of a failure, grade of evidence, type of property or funder; else null
 * @param groups the groups it counts in
 */
public record Contribution(
    ContributionSubject subject,
    String siteId,
    String deviceId,
    double amount,
    Origin origin,
    int day,
    String year,
    String part,
    ContributionGroups groups)
    implements Comparable<Contribution> {

  /** By subject, site, device, year, day, part and place in the files. */
  @Override
  public int compareTo(Contribution other) {
    int order = subject.code().compareTo(other.subject.code());
    order = order != 0 ? order : compare(siteId, other.siteId);
    order = order != 0 ? order : compare(deviceId, other.deviceId);
    order = order != 0 ? order : compare(year, other.year);
    order = order != 0 ? order : Integer.compare(day, other.day);
    order = order != 0 ? order : compare(part, other.part);
    order = order != 0 ? order : origin.compareTo(other.origin);
    order = order != 0 ? order : Double.compare(amount, other.amount);
    return order != 0 ? order : groups.compareTo(other.groups);
  }

  /** Null first. */
  private static int compare(String a, String b) {
    if (a == null || b == null) {
      return Boolean.compare(a != null, b != null);
    }
    return a.compareTo(b);
  }
}
