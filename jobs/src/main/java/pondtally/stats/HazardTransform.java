package pondtally.stats;

/** The function of age along which a hazard ratio is tested for drift. */
public enum HazardTransform {
  /**
   * 1 − product-limit curve of all lives just before the failure; not swayed by a few long lives,
   * hence the usual choice.
   */
  KM,
  /** Rank of the age among all ages at exit, ties averaged. */
  RANK,
  /** The age itself, in days. */
  IDENTITY,
  /** Logarithm of the age in days. */
  LOG
}
