package pondtally.history;

import java.io.Serializable;

/**
 * How one design stands against the specification.
 *
 * @param met items met
 * @param judged items that apply to the design and are recorded
 * @param group what follows
 */
public record BuildJudgement(int met, int judged, BuildGroup group) implements Serializable {}
