package pondtally.record;

/**
 * A device as it was put in, or as it was rebuilt after a replacement.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param deviceId the partner's own id of the device
 * @param siteId where it stands
 * @param installedOn days since 1970-01-01
 * @param deviceKind null: not recorded
 * @param pipeWall null: not recorded
 * @param pipeDiameterIn inside diameter, inches; null: not recorded
 * @param pipeLengthFt whole length, feet; null: not recorded
 * @param sectionLengthFt length of one section of pipe, feet; null: not recorded
 * @param fenceDiameterFt distance across the intake fence, feet; null: not recorded
 * @param fenceWireGauge gauge number: a smaller number is heavier wire; null: not recorded
 * @param fenceForm null: not recorded
 * @param fenceMeshIn mesh opening, inches; null: not recorded
 * @param topSlits slits along the top of the pipe; null: not recorded
 * @param bottomSlits slits along the bottom of the pipe; null: not recorded
 * @param gasHoles null: not recorded
 * @param weights number of blocks; null: not recorded
 * @param inletTied inlet tied at the middle of the fence; null: not recorded
 * @param outletHighest outlet is the highest point; null: not recorded
 * @param pipeCovered no pipe above water at the agreed level; null: not recorded
 * @param crew private; null: not recorded
 * @param funder who paid what no line says otherwise; null: not recorded
 * @param laborHours paid hours; null: not recorded
 * @param volunteerHours unpaid hours; null: not recorded
 * @param installCostUsd lump sum where no lines are kept; null: not recorded
 * @param matchFor award that the volunteer value is claimed against; null: unclaimed
 * @param trackedFrom first day the program followed it, days since 1970-01-01; null: the install
 *     day
 * @param retiredOn days since 1970-01-01; null: not retired by the install record
 * @param retiredReason null: not recorded
 */
public record Install(
    Origin origin,
    String partner,
    String deviceId,
    String siteId,
    int installedOn,
    DeviceKind deviceKind,
    PipeWall pipeWall,
    Double pipeDiameterIn,
    Double pipeLengthFt,
    Double sectionLengthFt,
    Double fenceDiameterFt,
    Double fenceWireGauge,
    FenceForm fenceForm,
    Double fenceMeshIn,
    Integer topSlits,
    Integer bottomSlits,
    Boolean gasHoles,
    Integer weights,
    Boolean inletTied,
    Boolean outletHighest,
    Boolean pipeCovered,
    String crew,
    String funder,
    Double laborHours,
    Double volunteerHours,
    Double installCostUsd,
    String matchFor,
    Integer trackedFrom,
    Integer retiredOn,
    RetiredReason retiredReason)
    implements Sourced {}
