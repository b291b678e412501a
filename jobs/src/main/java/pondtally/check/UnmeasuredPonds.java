package pondtally.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pondtally.record.Area;
import pondtally.record.Install;
import pondtally.record.Site;
import pondtally.record.Visit;

/** Ponds with a device whose wetland area nobody ever measured. */
final class UnmeasuredPonds {

  private UnmeasuredPonds() {}

  static void apply(OpenCluster cluster) {
    Map<String, String> pondOfSite = cluster.pondOfSite();
    Map<String, String> pondOfDevice = new HashMap<>();
    for (Install row : cluster.installs.list()) {
      pondOfDevice.put(row.deviceId(), pondOfSite.get(row.siteId()));
    }
    Set<String> withDevice = new HashSet<>(pondOfDevice.values());
    Set<String> measured = measured(cluster, pondOfSite, pondOfDevice);
    for (List<Site> ofPond : cluster.sites.by(OpenCluster::pondOf).values()) {
      String pond = OpenCluster.pondOf(ofPond.get(0));
      if (withDevice.contains(pond) && !measured.contains(pond)) {
        notice(cluster, ofPond.get(0), pond);
      }
    }
  }

  private static Set<String> measured(
      OpenCluster cluster, Map<String, String> pondOfSite, Map<String, String> pondOfDevice) {
    Set<String> ponds = new HashSet<>();
    for (Site row : cluster.sites.list()) {
      if (row.wetlandAcresBefore() != null) {
        ponds.add(OpenCluster.pondOf(row));
      }
    }
    for (Area row : cluster.areas.list()) {
      ponds.add(row.siteId() == null ? row.pondId() : pondOfSite.get(row.siteId()));
    }
    for (Visit row : cluster.visits.list()) {
      if (row.wetlandAcres() != null) {
        ponds.add(pondOfDevice.get(row.deviceId()));
      }
    }
    return ponds;
  }

  private static void notice(OpenCluster cluster, Site row, String pond) {
    String message =
        """
            The wetland of pond %s was never measured: no area before, none at a \
            visit, none in areas. The pond is left out of acres. Measure it at the \
            agreed level."""
            .formatted(Words.quote(pond));
    cluster.sites.notice(
        row, Remark.cell(CheckRule.POND_NEVER_MEASURED, "wetland_acres_before", "", message));
  }
}
