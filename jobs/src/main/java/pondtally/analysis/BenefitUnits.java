package pondtally.analysis;

/**
 * What one device, visit, repair and replacement costs, and the yearly damage that one device
 * stands against; dollars of the base year.
 */
record BenefitUnits(
    double damageUsd, double buildUsd, double visitUsd, double repairUsd, double replacementUsd) {}
