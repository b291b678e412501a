package pondtally.check;

/** One check across the rows of a cluster. */
interface ClusterRule {

  void apply(OpenCluster cluster);
}
