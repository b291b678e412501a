package pondtally.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import pondtally.record.Area;
import pondtally.record.Site;
import pondtally.record.Visit;

/**
 * A pond counts once, however many sites and devices it has, and is functional while at least one
 * of its devices is. What the first device lowered is the flooded extent before, less the first
 * area measured after entry. Where sites of one pond state areas before, that of the site entered
 * first counts as the pond's. Common practice, no source.
 */
final class PondRule {

  private static final Comparator<SiteHistory> ENTERED_FIRST =
      Comparator.comparing(
              SiteHistory::firstEntryOn, Comparator.nullsLast(Comparator.naturalOrder()))
          .thenComparing(site -> site.site().siteId());

  private final Map<String, List<Visit>> visits;
  private final List<Area> areas;
  private final Map<String, String> pondOfSite = new HashMap<>();
  private final HistoryRules rules;

  private PondRule(
      List<SiteHistory> sites,
      Map<String, List<Visit>> visits,
      List<Area> areas,
      HistoryRules rules) {
    this.visits = visits;
    this.areas = areas;
    this.rules = rules;
    sites.forEach(site -> pondOfSite.put(site.site().siteId(), site.pondId()));
  }

  /**
   * The ponds of one cluster.
   *
   * @param sites by site id
   * @param visits by device id
   * @return by pond id
   */
  static List<PondHistory> histories(
      List<SiteHistory> sites,
      Map<String, List<Visit>> visits,
      List<Area> areas,
      HistoryRules rules) {
    PondRule rule = new PondRule(sites, visits, areas, rules);
    SortedMap<String, List<SiteHistory>> byPond = new TreeMap<>();
    Histories.by(sites, SiteHistory::pondId, byPond);
    List<PondHistory> ponds = new ArrayList<>(byPond.size());
    byPond.forEach((pondId, own) -> ponds.add(rule.history(pondId, own)));
    return List.copyOf(ponds);
  }

  private PondHistory history(String pondId, List<SiteHistory> sites) {
    List<String> siteIds = sites.stream().map(site -> site.site().siteId()).sorted().toList();
    List<SiteHistory> entered = sites.stream().sorted(ENTERED_FIRST).toList();
    List<DeviceHistory> devices = sites.stream().flatMap(s -> s.devices().stream()).toList();
    Integer firstEntryOn = entered.get(0).firstEntryOn();
    SortedMap<Integer, Double> measured = measured(pondId, entered, devices);
    int abandonedOn = AbandonmentRule.abandonedOn(devices);
    return new PondHistory(
        pondId,
        siteIds,
        measured.isEmpty() ? null : AreaLine.of(measured, abandonedOn),
        firstStated(entered, Site::wetlandAcresBefore),
        lost(firstStated(entered, Site::floodedAcresBefore), firstEntryOn, measured, abandonedOn),
        firstEntryOn,
        Stretches.union(sites.stream().map(SiteHistory::functional).toList()));
  }

  private SortedMap<Integer, Double> measured(
      String pondId, List<SiteHistory> entered, List<DeviceHistory> devices) {
    AreaRule rule = new AreaRule();
    Integer pondEntryOn = entered.get(0).firstEntryOn();
    for (SiteHistory site : entered) {
      rule.addBefore(site, entryOn(site, pondEntryOn));
    }
    for (DeviceHistory device : devices) {
      rule.addVisits(visits.getOrDefault(device.deviceId(), List.of()));
    }
    for (Area area : areas) {
      if (pondId.equals(pondOf(area))) {
        rule.add(area);
      }
    }
    return rule.measured();
  }

  /** Entry that dates a site's area before: its own, else the pond's, else the data cut. */
  private int entryOn(SiteHistory site, Integer pondEntryOn) {
    if (site.firstEntryOn() != null) {
      return site.firstEntryOn();
    }
    return pondEntryOn == null ? HalfDays.startOf(rules.asOf()) : (int) pondEntryOn;
  }

  private String pondOf(Area area) {
    return area.pondId() == null ? pondOfSite.get(area.siteId()) : area.pondId();
  }

  private static Double firstStated(List<SiteHistory> entered, Function<Site, Double> acres) {
    for (SiteHistory site : entered) {
      if (acres.apply(site.site()) != null) {
        return acres.apply(site.site());
      }
    }
    return null;
  }

  private static Double lost(
      Double floodedAcres, Integer entryOn, SortedMap<Integer, Double> measured, int abandonedOn) {
    if (floodedAcres == null || entryOn == null) {
      return null;
    }
    SortedMap<Integer, Double> after = measured.tailMap(entryOn + 1);
    return after.isEmpty() || after.firstKey() >= abandonedOn
        ? null
        : (Double) (floodedAcres - after.get(after.firstKey()));
  }
}
