package pondtally.stage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which sites belong together because they share a pond or a property. Only linked sites are held:
 * a site that is alone is a cluster of its own.
 */
final class Linked implements Serializable {

  private static final long serialVersionUID = 1;

  private final Map<String, String> clusterOfSite;

  private Linked(Map<String, String> clusterOfSite) {
    this.clusterOfSite = clusterOfSite;
  }

  /** Joins sites that stand in one list, and lists that have a site in common. */
  static Linked of(List<List<String>> shared) {
    Map<String, String> parent = new HashMap<>();
    for (List<String> sites : shared) {
      for (String site : sites) {
        join(parent, sites.get(0), site);
      }
    }
    Map<String, String> clusters = new TreeMap<>();
    for (String site : new ArrayList<>(parent.keySet())) {
      clusters.put(site, root(parent, site));
    }
    return new Linked(new HashMap<>(clusters));
  }

  /** The cluster of a site: its smallest site id. */
  String cluster(String site) {
    return clusterOfSite.getOrDefault(site, site);
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
