package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import pondtally.reports.table.TablePackage;

/**
 * A setting or assumption of the run.
 *
 * @param cellName what formulas of the workbook call its cell
 * @param value as the run used it; empty where it was not set
 */
public record Setting(String cellName, String label, String value, String unit, String meaning) {

  /** Square meters in an acre of 43,560 square feet of 0.3048 m, by 10,000. Exact. */
  public static final double HECTARES_PER_ACRE = 0.40468564224;

  /** Days in a year, everywhere that days become years. */
  public static final double DAYS_PER_YEAR = 365.25;

  private static final String[][] FACTS = {
    {"region", "Region", "name", "Title of the reports."},
    {"as_of", "Data cut", "date", "Records dated later are not counted."},
    {"period_from", "Reporting period from", "date", "First day of the period."},
    {"period_to", "Reporting period to", "date", "Last day of the period."},
    {
      "failure",
      "What counts as failure",
      "rule",
      "The condition found at a visit that is a failure."
    },
    {
      "failure_dated",
      "How failures are dated",
      "rule",
      "interval: between two visits; midpoint: halfway; discovery: the day it was found."
    },
    {
      "base_year",
      "Price year",
      "year",
      "Every dollar is a dollar of this year unless it says nominal."
    },
    {
      "base_year_provisional",
      "Price year is provisional",
      "yes or no",
      "Whether dollars after the last index year took that year's index."
    },
    {"labor_rate_usd", "Labor rate", "USD per hour", "What an hour of paid work counts."},
    {
      "volunteer_rate_usd",
      "Volunteer rate",
      "USD per hour",
      "What an hour of volunteer work counts in kind. Not set: hours are shown as hours."
    },
    {"discount_rate", "Discount rate", "a year, real", "Brings later dollars to the present."},
    {"horizon_years", "Years looked ahead", "years", "How far projected figures look."},
    {
      "revisit_every_days",
      "Days between visits",
      "days",
      "The plan. A device not seen for more than twice this is unverified."
    },
    {
      "groups_below",
      "Smallest group that is ranked",
      "devices",
      "Groups with fewer devices are shown and never ranked."
    },
    {
      "watershed_digits",
      "Digits of watershed codes",
      "digits",
      "Level at which watersheds are compared."
    },
    {"version", "Version", "name", "Version of Pondtally that made the tables."},
  };

  /** What a setting is called; its own name where it has no other. */
  public static String label(String setting) {
    for (String[] fact : FACTS) {
      if (fact[0].equals(setting)) {
        return fact[1];
      }
    }
    String words = setting.replace('_', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** All settings of the run and the constants that formulas use. */
  public static List<Setting> all(TablePackage tables) {
    List<Setting> settings = new ArrayList<>();
    for (String[] fact : FACTS) {
      String name = Character.toUpperCase(fact[0].charAt(0)) + fact[0].substring(1);
      settings.add(new Setting(name, fact[1], tables.fact(fact[0]), fact[2], fact[3]));
    }
    settings.add(
        new Setting(
            "Hectares_per_acre",
            "Hectares in an acre",
            Double.toString(HECTARES_PER_ACRE),
            "hectares",
            "Constant: 43,560 square feet of 0.3048 m."));
    settings.add(
        new Setting(
            "Days_per_year",
            "Days in a year",
            Double.toString(DAYS_PER_YEAR),
            "days",
            "Constant: turns ages in days into years."));
    return settings;
  }
}
