package pondtally.analysis;

import java.io.Serializable;

/**
 * What one cluster contributes to one unit cost of one group.
 *
 * @param cashUsd dollars of the base year paid in cash
 * @param allUsd cash, in-kind lines and valued volunteer hours
 * @param units units of outcome
 */
public record EffectPart(GroupKey key, Measure measure, double cashUsd, double allUsd, double units)
    implements Serializable {}
