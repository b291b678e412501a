package pondtally.sample;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Draws the sites, and joins a few of them by a shared pond. */
final class SiteMaker {
  private static final List<String> OTHER_SETTINGS =
      List.of("forestry", "rail", "trail", "utility", "other");

  private SiteMaker() {}

  /** Every site, in order of its identifier. */
  static List<Site> sites() {
    Map<String, Site> sites = new LinkedHashMap<>();
    for (Partner partner : Partner.values()) {
      for (Site site : of(partner)) {
        sites.put(site.id(), site);
      }
    }
    sharePonds(sites);
    return new ArrayList<>(sites.values());
  }

  private static List<Site> of(Partner partner) {
    List<Site> sites = new ArrayList<>();
    int total = partner.sitesWithDevices + partner.sitesWithout;
    int without = 0;
    for (int i = 1; i <= total; i++) {
      boolean asksOnly = i % 7 == 6 && without < partner.sitesWithout;
      without += asksOnly ? 1 : 0;
      sites.add(site(partner, String.format(Locale.ROOT, "%s-%03d", partner.prefix, i), !asksOnly));
    }
    return sites;
  }

  private static Site site(Partner partner, String id, boolean hasDevice) {
    Draw draw = Draw.of("site", id);
    SampleTruth.Watershed watershed =
        SampleTruth.WATERSHEDS.get(draw.weighted(partner.watershedWeights()));
    String setting = setting(partner, draw);
    double acres = draw.lognormal(SampleTruth.POND_MEDIAN_ACRES, SampleTruth.POND_LOG_SD);
    double removals = Math.round(draw.lognormal(2.0, 0.6) * 2) / 2.0;
    double damage = draw.lognormal(medianDamageUsd(setting), 0.6);
    return new Site(id, partner, watershed, setting, id, acres, removals, damage, hasDevice);
  }

  private static String setting(Partner partner, Draw draw) {
    String usual =
        switch (partner) {
          case ORRENBY -> "road-crossing";
          case BRACKWEN -> "farmland";
          case LOWMARROW -> draw.chance(0.5) ? "residence" : "road-crossing";
          case QUARRINDALE, TESSARBY ->
              List.of("road-crossing", "farmland", "residence").get(draw.weighted(3, 2, 2));
        };
    return draw.chance(0.82) ? usual : draw.pick(OTHER_SETTINGS);
  }

  private static double medianDamageUsd(String setting) {
    return switch (setting) {
      case "road-crossing", "rail" -> 2400;
      case "farmland", "forestry" -> 1300;
      case "residence" -> 1600;
      default -> 900;
    };
  }

  private static void sharePonds(Map<String, Site> sites) {
    share(sites, "OR-004", "OR-005", "PN-01");
    share(sites, "TV-010", "TV-011", "PN-02");
    share(sites, "QD-007", "QD-008", "PN-03");
    share(sites, "BF-015", "BF-016", "PN-04");
    share(sites, "OR-023", "TV-022", "PN-05");
    share(sites, "LM-009", "OR-037", "PN-06");
  }

  /** The second site comes to lie on the first one's pond, so in its watershed too. */
  private static void share(Map<String, Site> sites, String first, String second, String pondId) {
    Site pond = sites.get(first);
    Site other = sites.get(second);
    sites.put(first, onPond(pond, pond, pondId));
    sites.put(second, onPond(other, pond, pondId));
  }

  private static Site onPond(Site site, Site pond, String pondId) {
    return new Site(
        site.id(),
        site.partner(),
        pond.watershed(),
        site.setting(),
        pondId,
        pond.acres(),
        site.removalsBefore(),
        site.damagePerYearUsd(),
        site.hasDevice());
  }
}
