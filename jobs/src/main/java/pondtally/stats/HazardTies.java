package pondtally.stats;

/** How failures on the same day enter the partial likelihood. */
public enum HazardTies {
  /**
   * Averages over the orders in which the tied failures may have happened (Efron 1977); the better
   * choice where ties are many.
   */
  EFRON,
  /** Gives every tied failure the whole risk set (Breslow 1974). */
  BRESLOW
}
