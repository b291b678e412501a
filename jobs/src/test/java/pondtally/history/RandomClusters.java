package pondtally.history;

import pondtally.record.ClusterRecords;

/** Random clusters for tests of other packages; days run from 0 to 1000. */
public final class RandomClusters {

  private RandomClusters() {}

  /** The rows of one cluster; the seed decides. */
  public static ClusterRecords of(long seed) {
    return RandomRows.of(seed).records();
  }
}
