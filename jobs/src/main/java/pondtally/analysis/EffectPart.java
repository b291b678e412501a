package pondtally.analysis;

import java.io.Serializable;

/**
 * What the devices of one group in one cluster cost and brought.
 *
 * @param key the group
 */
public record EffectPart(GroupKey key, Effect effect) implements Serializable {}
