package pondtally.check;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pondtally.record.Area;
import pondtally.record.ClusterRecords;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;
import pondtally.record.Visit;

/** A cluster while its rows are checked: what still counts, and what was said so far. */
final class OpenCluster {

  private static final Comparator<Install> BY_DAY =
      Comparator.comparingInt(Install::installedOn).thenComparing(Install::origin);

  final CheckSettings settings;
  final Rows<Site> sites;
  final Rows<Install> installs;
  final Rows<MaterialLine> materials;
  final Rows<Visit> visits;
  final Rows<Removal> removals;
  final Rows<Property> properties;
  final Rows<Area> areas;
  final Rows<Request> requests;
  private final String name;
  private final CheckLog log = new CheckLog();
  private final Map<String, Origin> firstInstallSent = new HashMap<>();
  private final Map<String, Integer> visitsSent = new HashMap<>();

  OpenCluster(ClusterRecords raw, CheckSettings settings) {
    this.settings = settings;
    name = raw.cluster();
    sites = new Rows<>("sites", raw.sites(), log);
    installs = new Rows<>("installs", raw.installs(), log);
    materials = new Rows<>("materials", raw.materials(), log);
    visits = new Rows<>("revisits", raw.visits(), log);
    removals = new Rows<>("removals", raw.removals(), log);
    properties = new Rows<>("properties", raw.properties(), log);
    areas = new Rows<>("areas", raw.areas(), log);
    requests = new Rows<>("requests", raw.requests(), log);
    installs.list().forEach(i -> firstInstallSent.putIfAbsent(i.deviceId(), i.origin()));
    visits.list().forEach(v -> visitsSent.merge(v.deviceId(), 1, Integer::sum));
  }

  List<Rows<?>> tables() {
    return List.of(sites, installs, materials, visits, removals, properties, areas, requests);
  }

  int rowsKept() {
    return tables().stream().mapToInt(Rows::size).sum();
  }

  Set<String> siteIds() {
    return sites.list().stream().map(Site::siteId).collect(Collectors.toCollection(TreeSet::new));
  }

  /** The pond of each site that counts: the one it names, else one of its own. */
  Map<String, String> pondOfSite() {
    Map<String, String> ponds = new HashMap<>();
    sites.list().forEach(site -> ponds.put(site.siteId(), pondOf(site)));
    return ponds;
  }

  static String pondOf(Site site) {
    return site.pondId() == null ? site.siteId() : site.pondId();
  }

  /** The first install row of a device as sent, whatever became of it; null where there is none. */
  Origin firstInstallSent(String deviceId) {
    return firstInstallSent.get(deviceId);
  }

  /** How many visit rows of a device were sent, whatever became of them. */
  int visitsSent(String deviceId) {
    return visitsSent.getOrDefault(deviceId, 0);
  }

  /** Install rows that count, by device, each list by install day. */
  SortedMap<String, List<Install>> lives() {
    SortedMap<String, List<Install>> lives = installs.by(Install::deviceId);
    lives.values().forEach(rows -> rows.sort(BY_DAY));
    return lives;
  }

  CheckedCluster close() {
    ClusterRecords kept =
        new ClusterRecords(
            name,
            sites.list(),
            installs.list(),
            materials.list(),
            visits.list(),
            removals.list(),
            properties.list(),
            areas.list(),
            requests.list());
    return new CheckedCluster(kept, log.findings(), log.verdicts());
  }
}
