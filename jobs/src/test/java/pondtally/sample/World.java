package pondtally.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Everything that happened in the invented region, and the clean records of it by partner and
 * table.
 */
final class World {
  private final List<Site> sites = SiteMaker.sites();
  private final List<History> histories;
  private final Map<String, Partner> partnersOfPonds = new HashMap<>();
  private final Map<Partner, Map<Table, List<Row>>> records = new EnumMap<>(Partner.class);

  World() {
    histories = DeviceMaker.devices(sites).stream().map(HistoryMaker::of).toList();
    sites.forEach(site -> partnersOfPonds.putIfAbsent(site.pondId(), site.partner()));
    Map<String, LocalDate> first = firstInstalls();
    file(Table.SITES, SiteRows.of(sites, first), "site_id");
    file(Table.INSTALLS, InstallRows.of(histories), "device_id", "installed_on");
    file(Table.MATERIALS, MaterialRows.of(histories), "device_id", "purchased_on");
    file(Table.REVISITS, VisitRows.of(histories), "visited_on", "device_id");
    file(Table.PROPERTIES, ProtectionRows.properties(sites, first), "property_id");
    file(Table.REMOVALS, ProtectionRows.removals(sites, first), "year", "site_id");
    file(Table.AREAS, AreaRows.of(sites, first), "measured_on", "site_id");
    file(Table.REQUESTS, OfficeRows.requests(sites, first), "asked_on", "site_id");
  }

  private Map<String, LocalDate> firstInstalls() {
    Map<String, LocalDate> first = new HashMap<>();
    for (History history : histories) {
      LocalDate on = history.device().installedOn();
      first.merge(history.device().site().id(), on, (a, b) -> a.isBefore(b) ? a : b);
    }
    return first;
  }

  private void file(Table table, List<Row> rows, String... order) {
    Comparator<Row> comparator = Comparator.comparing(row -> row.text(order[0]));
    for (int i = 1; i < order.length; i++) {
      String field = order[i];
      comparator = comparator.thenComparing(row -> row.text(field));
    }
    for (Row row : rows.stream().sorted(comparator).toList()) {
      records
          .computeIfAbsent(partner(row), p -> new EnumMap<>(Table.class))
          .computeIfAbsent(table, t -> new ArrayList<>())
          .add(row);
    }
  }

  private Partner partner(Row row) {
    if (row.has("pond_id") && !row.has("site_id")) {
      return partnersOfPonds.get(row.text("pond_id"));
    }
    String id = row.has("device_id") ? row.text("device_id") : row.text("site_id");
    for (Partner partner : Partner.values()) {
      if (id.startsWith(partner.prefix)) {
        return partner;
      }
    }
    throw new IllegalStateException("Whose row is this? " + row.values());
  }

  List<Site> sites() {
    return sites;
  }

  List<History> histories() {
    return histories;
  }

  /** A partner's clean records of a table, in order. */
  List<Row> records(Partner partner, Table table) {
    return records.get(partner).getOrDefault(table, List.of());
  }

  List<Row> records(Partner partner, Table table, Predicate<Row> which) {
    return records(partner, table).stream().filter(which).toList();
  }

  /**
   * Rows whose date in that field lies in those years; an empty date is that of {@code fallback}.
   */
  static Predicate<Row> years(String field, int from, int to, Map<String, LocalDate> fallback) {
    return row -> {
      LocalDate day = row.has(field) ? row.day(field) : fallback.get(row.text("device_id"));
      return day.getYear() >= from && day.getYear() <= to;
    };
  }

  static Predicate<Row> years(String field, int from, int to) {
    return years(field, from, to, Map.of());
  }

  /** The first install date of each device. */
  Map<String, LocalDate> installDates() {
    Map<String, LocalDate> dates = new HashMap<>();
    histories.forEach(history -> dates.put(history.device().id(), history.device().installedOn()));
    return dates;
  }
}
