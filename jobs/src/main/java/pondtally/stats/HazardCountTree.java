package pondtally.stats;

/** Counts by rank with fast sums over lower ranks (binary indexed tree, Fenwick 1994). */
final class HazardCountTree {
  private final long[] tree;
  private final long[] own;
  private long total;

  HazardCountTree(int ranks) {
    tree = new long[ranks + 1];
    own = new long[ranks];
  }

  void add(int rank, long count) {
    own[rank] += count;
    total += count;
    for (int i = rank + 1; i < tree.length; i += i & -i) {
      tree[i] += count;
    }
  }

  long below(int rank) {
    long sum = 0;
    for (int i = rank; i > 0; i -= i & -i) {
      sum += tree[i];
    }
    return sum;
  }

  long equal(int rank) {
    return own[rank];
  }

  long above(int rank) {
    return total - own[rank] - below(rank);
  }
}
