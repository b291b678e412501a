package pondtally.analysis;

/**
 * What the devices of one group in one cluster cost and brought.
 *
 * @param key the group
 */
public record EffectPart(GroupKey key, Effect effect) {}
