package pondtally.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The requests, expenses and budgets tables: what an office keeps beside the field records. */
final class OfficeRows {

  /**
   * Published business mileage rates, dollars a mile; 2022 is the first half's. Years before from
   * memory, invented use.
   */
  private static final Map<Integer, Double> USD_PER_MILE =
      Map.of(
          2017, 0.535, 2018, 0.545, 2019, 0.58, 2020, 0.575, 2021, 0.56, 2022, 0.585, 2023, 0.655,
          2024, 0.67, 2025, 0.70);

  private OfficeRows() {}

  static List<Row> requests(List<Site> sites, Map<String, LocalDate> firstInstalls) {
    List<Row> rows = new ArrayList<>();
    for (Site site : sites) {
      LocalDate first = firstInstalls.get(site.id());
      Draw draw = Draw.of("requests", site.id());
      if (first == null) {
        LocalDate asked =
            LocalDate.of(draw.between(2021, 2025), draw.between(3, 10), draw.between(1, 28));
        String outcome =
            asked.getYear() == 2025 ? "waiting" : draw.chance(0.5) ? "unsuitable" : "declined";
        rows.add(request(site, asked, outcome));
      } else if (draw.chance(0.3)) {
        rows.add(request(site, first.minusDays(draw.between(20, 200)), "installed"));
      }
    }
    rows.sort(
        Comparator.comparing((Row row) -> row.day("asked_on"))
            .thenComparing(row -> row.text("site_id")));
    return rows;
  }

  private static Row request(Site site, LocalDate asked, String outcome) {
    return new Row().with("site_id", site.id()).with("asked_on", asked).with("outcome", outcome);
  }

  static List<Row> expenses(Partner partner) {
    List<Row> rows = new ArrayList<>();
    for (int year = partner.firstYear; year <= 2025; year++) {
      Draw draw = Draw.of("expenses", partner.prefix, String.valueOf(year));
      for (int quarter = 0; quarter < 4; quarter++) {
        rows.add(travel(partner, year, quarter, draw));
      }
      rows.add(
          expense(
              partner,
              LocalDate.of(year, 2, draw.between(1, 28)),
              "permit",
              40 * draw.between(1, 6),
              draw));
      if (draw.chance(0.6)) {
        rows.add(
            expense(
                partner,
                LocalDate.of(year, 4, draw.between(1, 28)),
                "training",
                draw.uniform(150, 600),
                draw));
      }
      if (draw.chance(0.5)) {
        rows.add(
            expense(
                partner,
                LocalDate.of(year, 5, draw.between(1, 28)),
                "equipment",
                draw.uniform(90, 900),
                draw));
      }
      rows.add(
          expense(
              partner,
              LocalDate.of(year, 12, draw.between(5, 20)),
              "administration",
              draw.uniform(300, 1500),
              draw));
    }
    rows.sort(Comparator.comparing(row -> row.day("date")));
    return rows;
  }

  private static Row travel(Partner partner, int year, int quarter, Draw draw) {
    LocalDate day = LocalDate.of(year, 3 * quarter + 3, 28);
    int miles = draw.between(120, 900);
    return expense(partner, day, "travel", miles * USD_PER_MILE.get(year), draw)
        .with("miles", miles);
  }

  private static Row expense(Partner partner, LocalDate day, String kind, double usd, Draw draw) {
    Row row = new Row().with("date", day).with("kind", kind).with("usd", usd, 2);
    boolean given = partner == Partner.QUARRINDALE && draw.chance(0.15);
    if (given) {
      return row.with("paid_by", "in-kind").with("match_for", "Ninefold Habitat Award");
    }
    return row.with("paid_by", partner.funder(day.getYear()));
  }

  /** Awards of the road and farm levies. */
  static List<Row> levies() {
    List<Row> rows = new ArrayList<>();
    for (int year = 2017; year <= 2025; year++) {
      LocalDate from = LocalDate.of(year, 1, 1);
      rows.add(
          budget(
              "Orrenby Road Levy",
              from,
              LocalDate.of(year, 12, 31),
              24000 + 1500 * (year - 2017),
              0));
    }
    for (int year = 2018; year <= 2024; year += 2) {
      rows.add(
          budget(
              "Brackwen Farm Levy",
              LocalDate.of(year, 7, 1),
              LocalDate.of(year + 2, 6, 30),
              22000,
              2200));
    }
    return rows;
  }

  /** Awards of the two funders who ask for match. */
  static List<Row> awards() {
    List<Row> rows = new ArrayList<>();
    for (int year = 2017; year <= 2023; year += 3) {
      rows.add(
          budget(
              "Tessarby Water Award",
              LocalDate.of(year, 10, 1),
              LocalDate.of(year + 3, 9, 30),
              60000,
              15000));
    }
    for (int year = 2018; year <= 2024; year += 3) {
      rows.add(
          budget(
              "Ninefold Habitat Award",
              LocalDate.of(year, 1, 1),
              LocalDate.of(year + 2, 12, 31),
              75000,
              18750));
    }
    return rows;
  }

  private static Row budget(
      String funder, LocalDate from, LocalDate to, int awardUsd, int matchUsd) {
    Row row = new Row().with("funder", funder).with("period_start", from).with("period_end", to);
    return row.with("award_usd", awardUsd).with("match_required_usd", matchUsd);
  }
}
