package pondtally.check;

import org.junit.jupiter.api.Test;

class ClusterChecksTest {

  @Test
  void aSoundClusterPasses() {
    TestCluster.sound().finds().judges();
  }
}
