package pondtally.reports.chart;

import java.util.List;

/** Wetland kept and removals avoided, made up outright. */
final class InventedGains {

  private final TestTables tables;

  InventedGains(TestTables tables) {
    this.tables = tables;
  }

  void wetland(List<String> watersheds) {
    for (int year = 2019; year <= 2026; year++) {
      double sum = 0;
      int number = 0;
      for (String group : watersheds) {
        number++;
        boolean measured = number % 8 != 7;
        double acreYears = (year - 2018) * (2 + (number * 5) % 7);
        sum += measured ? acreYears : 0;
        tables.row(
            "wetland",
            "grouping",
            "watershed",
            "group",
            group,
            "year",
            year,
            "sites",
            10 + number,
            "sites_measured",
            measured ? 7 + number : 0,
            "acre_years",
            measured ? acreYears : null,
            "acre_years_extrapolated",
            measured ? acreYears * (year > 2023 ? 0.5 : 0.1) : null);
      }
      tables.row(
          "wetland",
          "grouping",
          "all",
          "group",
          "all",
          "year",
          year,
          "acre_years",
          sum,
          "sites",
          120,
          "sites_measured",
          96);
    }
    tables.row("wetland", "grouping", "all", "group", "all", "year", "all", "acre_years", 999.0);
  }

  void removals() {
    double[] computed = {-2.5, 6, 14.2, 18.9, 25.1, 27.6};
    for (int i = 0; i < computed.length; i++) {
      int year = 2020 + i;
      tables.row(
          "removals_avoided",
          "grouping",
          "all",
          "group",
          "all",
          "year",
          year,
          "evidence",
          "",
          "sites",
          30 + 4 * i,
          "sites_left_out",
          11,
          "avoided_computed",
          computed[i]);
      claim(year, "estimate", 20 + 3.0 * i);
      claim(year, "log", 5 + 2.0 * i);
      if (i > 2) {
        claim(year, "permit", 4.0 + i);
      }
    }
  }

  private void claim(int year, String evidence, double claimed) {
    tables.row(
        "removals_avoided",
        "grouping",
        "all",
        "group",
        "all",
        "year",
        year,
        "evidence",
        evidence,
        "sites",
        9,
        "avoided_claimed",
        claimed);
  }
}
