package pondtally.record;

/**
 * One visit to a device after it was installed.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param deviceId the device visited
 * @param visitedOn days since 1970-01-01
 * @param condition state in which the device was found
 * @param cause null: not recorded
 * @param action what was done; null: nothing recorded, read as none
 * @param reason null: not recorded
 * @param hours paid hours; null: not recorded
 * @param volunteerHours unpaid hours; null: not recorded
 * @param costUsd nominal dollars spent, hours not included; null: not recorded
 * @param paidBy a funder, or {@code in-kind}; null: the device's funder
 * @param matchFor award that an in-kind or volunteer value is claimed against; null: unclaimed
 * @param wetlandAcres pond's wetland area that day; null: not measured
 * @param beaverPresent null: not recorded
 * @param notes private; null: none
 */
public record Visit(
    Origin origin,
    String partner,
    String deviceId,
    int visitedOn,
    Condition condition,
    Cause cause,
    Action action,
    VisitReason reason,
    Double hours,
    Double volunteerHours,
    Double costUsd,
    String paidBy,
    String matchFor,
    Double wetlandAcres,
    Boolean beaverPresent,
    String notes)
    implements Sourced {}
