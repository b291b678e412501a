package pondtally.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.record.Property;

/**
 * A property is protected while any device at one of its sites is functional, from {@code
 * protected_from} (default: the site's first entry) through {@code protected_until}, that day
 * included. It counts once: where several rows name it, each row's span holds at that row's site,
 * and the spans' union is the property's. Common practice, no source.
 */
final class PropertyRule {

  private PropertyRule() {}

  /**
   * The properties of one cluster.
   *
   * @return by property id
   */
  static List<PropertyHistory> histories(List<Property> rows, List<SiteHistory> sites) {
    SortedMap<String, List<Property>> byId = new TreeMap<>();
    Histories.by(rows, Property::propertyId, byId);
    List<PropertyHistory> histories = new ArrayList<>(byId.size());
    if (!byId.isEmpty()) {
      Map<String, SiteHistory> bySite = new TreeMap<>();
      sites.forEach(site -> bySite.put(site.site().siteId(), site));
      byId.values().forEach(same -> histories.add(history(same, bySite)));
    }
    return List.copyOf(histories);
  }

  private static PropertyHistory history(List<Property> rows, Map<String, SiteHistory> sites) {
    rows.sort(Comparator.comparing(Property::origin));
    List<String> siteIds = rows.stream().map(Property::siteId).distinct().sorted().toList();
    List<Stretches> spans = new ArrayList<>(rows.size());
    for (Property row : rows) {
      SiteHistory site = sites.get(row.siteId());
      if (site != null) {
        spans.add(protectedTime(row, site));
      }
    }
    return new PropertyHistory(rows.get(0), siteIds, Stretches.union(spans));
  }

  private static Stretches protectedTime(Property row, SiteHistory site) {
    // Nothing is functional before the first entry, the default of protected_from.
    int from =
        row.protectedFrom() == null
            ? Integer.MIN_VALUE
            : HalfDays.startOf((int) row.protectedFrom());
    int to =
        row.protectedUntil() == null
            ? Integer.MAX_VALUE
            : HalfDays.startOf((int) row.protectedUntil()) + HalfDays.DAY;
    return site.functional().within(from, to);
  }
}
