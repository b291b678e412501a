package pondtally.record;

/**
 * One line of material cost of a device.
 *
 * @param origin the row it was read from
 * @param partner who sent it
 * @param deviceId the device it was bought for
 * @param item what was bought
 * @param quantity how many, in {@code unit}
 * @param unit null: not recorded
 * @param unitCostUsd nominal dollars a unit; null: not recorded
 * @param totalCostUsd nominal dollars of the line; null: quantity times unitCostUsd
 * @param purchasedOn days since 1970-01-01; null: the install day
 * @param paidBy a funder, or {@code in-kind}; null: the device's funder
 * @param matchFor award that an in-kind value is claimed against; null: unclaimed
 */
public record MaterialLine(
    Origin origin,
    String partner,
    String deviceId,
    MaterialItem item,
    double quantity,
    String unit,
    Double unitCostUsd,
    Double totalCostUsd,
    Integer purchasedOn,
    String paidBy,
    String matchFor)
    implements Sourced {}
