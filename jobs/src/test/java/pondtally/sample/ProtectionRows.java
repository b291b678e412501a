package pondtally.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The properties and removals tables: what each site protects, and which animals were still taken.
 */
final class ProtectionRows {
  private static final Map<String, Double> YEARLY_DAMAGE_USD =
      Map.ofEntries(
          Map.entry("road", 1700.0),
          Map.entry("culvert", 900.0),
          Map.entry("home", 1500.0),
          Map.entry("septic", 700.0),
          Map.entry("well", 450.0),
          Map.entry("cropland", 850.0),
          Map.entry("pasture", 400.0),
          Map.entry("timber", 500.0),
          Map.entry("rail", 2600.0),
          Map.entry("trail", 350.0),
          Map.entry("utility", 1100.0),
          Map.entry("other", 500.0));

  private ProtectionRows() {}

  static List<Row> properties(List<Site> sites, Map<String, LocalDate> firstInstalls) {
    List<Row> rows = new ArrayList<>();
    for (Site site : sites) {
      LocalDate first = firstInstalls.get(site.id());
      Draw draw = Draw.of("properties", site.id());
      int count = first == null ? 0 : draw.weighted(0.12, 0.44, 0.30, 0.14);
      for (int i = 1; i <= count; i++) {
        rows.add(property(site, first, "P-" + site.id() + "-" + i, draw));
      }
    }
    return rows;
  }

  private static Row property(Site site, LocalDate first, String id, Draw draw) {
    String type = draw.pick(types(site.setting()));
    Row row =
        new Row().with("property_id", id).with("site_id", site.id()).with("property_type", type);
    if (draw.chance(0.3)) {
      row.with("protected_from", first.plusDays(draw.between(0, 30)));
    }
    LocalDate until = first.plusDays(draw.between(700, 2400));
    if (draw.chance(0.05) && until.isBefore(SampleTruth.AS_OF)) {
      row.with("protected_until", until);
    }
    if (draw.chance(0.8)) {
      int year = Math.max(2016, first.getYear() - draw.between(0, 1));
      double usd =
          YEARLY_DAMAGE_USD.get(type) * draw.lognormal(1.0, 0.6) * SampleTruth.inflation(year);
      row.with("damage_per_year_usd", Math.round(usd / 10) * 10).with("damage_year", year);
    }
    return row.with("owner", draw.chance(0.6) ? SiteRows.household(draw) : "");
  }

  private static List<String> types(String setting) {
    return switch (setting) {
      case "road-crossing" -> List.of("road", "culvert", "culvert", "home", "utility");
      case "farmland" -> List.of("cropland", "pasture", "well", "timber", "cropland");
      case "residence" -> List.of("home", "septic", "well", "home", "road");
      case "rail" -> List.of("rail", "culvert");
      case "trail" -> List.of("trail", "trail", "utility");
      case "forestry" -> List.of("timber", "road");
      default -> List.of("utility", "other", "culvert");
    };
  }

  static List<Row> removals(List<Site> sites, Map<String, LocalDate> firstInstalls) {
    List<Row> rows = new ArrayList<>();
    for (Site site : sites) {
      LocalDate first = firstInstalls.get(site.id());
      Draw draw = Draw.of("removals", site.id());
      boolean reports = first != null && site.partner() != Partner.QUARRINDALE && draw.chance(0.55);
      for (int year = reports ? Math.max(2017, first.getYear()) : 2026; year <= 2025; year++) {
        if (draw.chance(0.8)) {
          rows.add(removal(site, year, year == first.getYear(), draw));
        }
      }
    }
    return rows;
  }

  private static Row removal(Site site, int year, boolean firstYear, Draw draw) {
    double share = firstYear ? 0.5 : SampleTruth.REMOVALS_LEFT_SHARE;
    Row row = new Row().with("site_id", site.id()).with("year", year);
    row.with("removals", draw.poisson(site.removalsBefore() * share));
    if (draw.chance(0.25)) {
      row.with("avoided", Math.max(0, Math.round(site.removalsBefore() + draw.between(-1, 1))));
    }
    String evidence =
        List.of("permit", "invoice", "log", "estimate", "").get(draw.weighted(3, 1.5, 3, 2, 0.5));
    return row.with("evidence", evidence);
  }
}
