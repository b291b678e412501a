package pondtally.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The areas table: ponds measured by several methods, some never. */
final class AreaRows {

  private AreaRows() {}

  /** The true area as such a method would measure it; logarithmic spread by method. */
  static double measured(double acres, String method, Draw draw) {
    double spread =
        switch (method) {
          case "survey" -> 0.015;
          case "walked" -> 0.05;
          case "imagery" -> 0.07;
          default -> 0.18;
        };
    return Math.max(0.2, acres * draw.lognormal(1.0, spread));
  }

  static List<Row> of(List<Site> sites, Map<String, LocalDate> firstInstalls) {
    List<Row> rows = new ArrayList<>();
    Set<String> ponds = new HashSet<>();
    for (Site site : sites) {
      LocalDate first = firstInstalls.get(site.id());
      Draw draw = Draw.of("areas", site.id());
      if (first != null && ponds.add(site.pondId()) && draw.chance(share(site.partner()))) {
        rows.addAll(ofPond(site, first, draw));
      }
    }
    return rows;
  }

  private static double share(Partner partner) {
    return partner == Partner.QUARRINDALE ? 0.75 : 0.30;
  }

  private static List<Row> ofPond(Site site, LocalDate firstInstall, Draw draw) {
    List<Row> rows = new ArrayList<>();
    boolean shared = !site.pondId().equals(site.id());
    LocalDate day = firstInstall.plusDays(draw.between(60, 700));
    double left = draw.uniform(0.88, 1.0); // what lowering the water leaves of the area
    while (day.isBefore(SampleTruth.AS_OF)) {
      String method =
          List.of("walked", "survey", "imagery", "estimate", "")
              .get(draw.weighted(5, 1.5, 3, 1.5, 0.7));
      Row row = new Row().with(shared ? "pond_id" : "site_id", shared ? site.pondId() : site.id());
      row.with("measured_on", day).with("acres", measured(site.acres() * left, method, draw), 2);
      rows.add(row.with("method", method));
      day = day.plusDays(draw.between(500, 1400));
    }
    return rows;
  }
}
