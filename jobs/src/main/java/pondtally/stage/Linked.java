package pondtally.stage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which sites belong together because they share a pond or a property. Only linked sites are held:
 * a site that is alone is a cluster of its own.
 */
final class Linked implements Serializable {

  private static final long serialVersionUID = 1;

  private final Map<String, String> clusterOfSite = new HashMap<>();
  private final Map<String, String> siteOfPond = new HashMap<>();

  private Linked() {}

  /**
   * Joins sites that stand in one list, and lists that have a site in common.
   *
   * @param shared sites that share a pond or a property
   * @param siteOfPond a site of each pond whose areas name the pond alone
   */
  static Linked of(List<List<String>> shared, Map<String, String> siteOfPond) {
    Map<String, String> parent = new HashMap<>();
    for (List<String> sites : shared) {
      for (String site : sites) {
        join(parent, sites.get(0), site);
      }
    }
    Linked linked = new Linked();
    for (String site : new ArrayList<>(parent.keySet())) {
      linked.clusterOfSite.put(site, root(parent, site));
    }
    linked.siteOfPond.putAll(siteOfPond);
    return linked;
  }

  /** The cluster of a site: its smallest site id. */
  String cluster(String site) {
    return clusterOfSite.getOrDefault(site, site);
  }

  /** A site of a pond; null where no site names the pond. */
  String siteOfPond(String pond) {
    return siteOfPond.get(pond);
  }

  private static void join(Map<String, String> parent, String a, String b) {
    String rootA = root(parent, a);
    String rootB = root(parent, b);
    if (rootA.compareTo(rootB) < 0) {
      parent.put(rootB, rootA);
    } else if (!rootA.equals(rootB)) {
      parent.put(rootA, rootB);
    }
  }

  private static String root(Map<String, String> parent, String site) {
    String at = site;
    parent.putIfAbsent(at, at);
    while (!parent.get(at).equals(at)) {
      parent.put(at, parent.get(parent.get(at)));
      at = parent.get(at);
    }
    return at;
  }
}
