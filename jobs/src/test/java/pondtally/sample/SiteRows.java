package pondtally.sample;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The sites table: who owns what where, and what the conflict cost before. */
final class SiteRows {
  private static final List<String> NAME_STARTS =
      List.of(
          "Vor", "Ques", "Tavis", "Ombre", "Kesta", "Drune", "Ilva", "Posken", "Ruth", "Yarro",
          "Zelm", "Huvar");
  private static final List<String> NAME_ENDS =
      List.of("rindol", "kovane", "thulby", "massel", "gorwy", "lentz", "quand");
  private static final Map<String, List<String>> TOWNS =
      Map.of(
          "North Quorrel", List.of("Orrenby", "Tessarby", "Ostelbridge"),
          "South Quorrel", List.of("Quarrindale", "Dunwether", "Marrowfen"),
          "East Quorrel", List.of("Brackwen", "Lowmarrow"));

  private SiteRows() {}

  static List<Row> of(List<Site> sites, Map<String, LocalDate> firstInstalls) {
    Set<String> pondsWithArea = new HashSet<>();
    return sites.stream()
        .map(site -> row(site, firstInstalls.get(site.id()), pondsWithArea.add(site.pondId())))
        .toList();
  }

  private static Row row(Site site, LocalDate firstInstall, boolean firstOnPond) {
    Draw draw = Draw.of("site-row", site.id());
    Row row = new Row().with("site_id", site.id());
    row.with("watershed", site.watershed().code()).with("setting", site.setting());
    Draw pond = Draw.of("pond-place", site.pondId());
    double latitude = site.watershed().latitude() + pond.uniform(-0.09, 0.09);
    double longitude = site.watershed().longitude() + pond.uniform(-0.09, 0.09);
    row.with("latitude", latitude + draw.uniform(-0.002, 0.002), 4);
    row.with("longitude", longitude + draw.uniform(-0.002, 0.002), 4);
    row.with("landowner", landowner(site, draw));
    if (!site.pondId().equals(site.id())) {
      row.with("pond_id", site.pondId());
    }
    conflict(site, firstInstall, draw, row);
    area(site, firstOnPond, draw, row);
    place(site, draw, row);
    agreements(firstInstall, draw, row);
    return row;
  }

  private static String landowner(Site site, Draw draw) {
    if (site.setting().equals("road-crossing")) {
      return draw.chance(0.7) ? "Orrenby road office" : "";
    }
    return draw.chance(0.85) ? household(draw) : "";
  }

  /** A made-up household, from syllables that are nobody's name. */
  static String household(Draw draw) {
    return draw.pick(NAME_STARTS) + draw.pick(NAME_ENDS) + " household";
  }

  private static void conflict(Site site, LocalDate firstInstall, Draw draw, Row row) {
    if (draw.chance(0.75)) {
      row.with("removals_per_year_before", site.removalsBefore(), 1);
    }
    if (draw.chance(0.62)) {
      int year = firstInstall == null ? 2024 : Math.max(2016, firstInstall.getYear() - 1);
      double usd = site.damagePerYearUsd() * SampleTruth.inflation(year);
      row.with("damage_cost_per_year_before_usd", Math.round(usd / 10) * 10);
      row.with("damage_cost_year", year);
    }
  }

  private static void area(Site site, boolean firstOnPond, Draw draw, Row row) {
    boolean kept = site.partner() != Partner.QUARRINDALE && draw.chance(0.72);
    if (!firstOnPond || !(kept || !site.hasDevice())) {
      return;
    }
    row.with("wetland_acres_before", AreaRows.measured(site.acres(), "walked", draw), 1);
    row.with("area_method", draw.chance(0.6) ? "walked" : draw.chance(0.7) ? "imagery" : "");
    if (draw.chance(0.3)) {
      double ratio = draw.uniform(SampleTruth.FLOODED_RATIO_LOW, SampleTruth.FLOODED_RATIO_HIGH);
      row.with("flooded_acres_before", site.acres() * ratio, 1);
    }
  }

  private static void place(Site site, Draw draw, Row row) {
    String county =
        site.watershed().code().startsWith("99010101")
            ? "North Quorrel"
            : site.watershed().code().startsWith("99010102") ? "South Quorrel" : "East Quorrel";
    row.with("county", county).with("town", draw.pick(TOWNS.get(county)));
    if (site.setting().equals("road-crossing")) {
      row.with("road_id", String.format(Locale.ROOT, "QR-%03d", draw.between(101, 389)));
    }
  }

  private static void agreements(LocalDate firstInstall, Draw draw, Row row) {
    if (firstInstall == null) {
      return;
    }
    if (draw.chance(0.35)) {
      row.with("permit_until", yearsEnd(firstInstall, draw.between(3, 9)));
    }
    if (draw.chance(0.3)) {
      row.with("agreed_level_until", yearsEnd(firstInstall, draw.between(4, 10)));
    }
  }

  private static LocalDate yearsEnd(LocalDate from, int years) {
    return LocalDate.of(from.getYear() + years, 12, 31);
  }
}
