package pondtally.analysis;

import java.io.Serializable;
import java.util.List;

/**
 * What one cluster contributed, kept for the pass that weighs it against the totals.
 *
 * @param cluster its name
 */
public record ClusterPart(
    String cluster, List<EffectPart> effects, List<LifePart> lives, List<RepeatPart> devices)
    implements Serializable {}
