package pondtally.reports.view;

import java.util.ArrayList;
import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;

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
    {
      "region",
      Messages.of("view.Setting.region"),
      Messages.of("setting.unit.name"),
      Messages.of("view.Setting.title-of-the-reports")
    },
    {
      "as_of",
      Messages.of("view.Setting.data-cut"),
      Messages.of("setting.unit.date"),
      Messages.of("view.Setting.records-dated-later-are-not-counted")
    },
    {
      "period_from",
      Messages.of("view.Setting.reporting-period-from"),
      Messages.of("setting.unit.date"),
      Messages.of("view.Setting.first-day-of-the-period")
    },
    {
      "period_to",
      Messages.of("view.Setting.reporting-period-to"),
      Messages.of("setting.unit.date"),
      Messages.of("view.Setting.last-day-of-the-period")
    },
    {
      "failure",
      Messages.of("view.Setting.what-counts-as-failure"),
      Messages.of("setting.unit.rule"),
      Messages.of("view.Setting.the-condition-found-at-a-visit")
    },
    {
      "failure_dated",
      Messages.of("view.Setting.how-failures-are-dated"),
      Messages.of("setting.unit.rule"),
      Messages.of("view.Setting.interval-between-two-visits-midpoint-halfway")
    },
    {
      "base_year",
      Messages.of("view.Setting.price-year"),
      Messages.of("setting.unit.year"),
      Messages.of("view.Setting.every-dollar-is-a-dollar-of")
    },
    {
      "base_year_provisional",
      Messages.of("view.Setting.price-year-is-provisional"),
      Messages.of("view.Setting.yes-or-no"),
      Messages.of("view.Setting.whether-dollars-after-the-last-index")
    },
    {
      "labor_rate_usd",
      Messages.of("view.Setting.labor-rate"),
      Messages.of("view.Setting.usd-per-hour"),
      Messages.of("view.Setting.what-an-hour-of-paid-work")
    },
    {
      "volunteer_rate_usd",
      Messages.of("view.Setting.volunteer-rate"),
      Messages.of("view.Setting.usd-per-hour"),
      Messages.of("view.Setting.what-an-hour-of-volunteer-work")
    },
    {
      "discount_rate",
      Messages.of("common.Discount-rate"),
      Messages.of("common.a-year-real"),
      Messages.of("view.Setting.brings-later-dollars-to-the-present")
    },
    {
      "horizon_years",
      Messages.of("common.Years-looked-ahead"),
      Messages.of("setting.unit.years"),
      Messages.of("view.Setting.how-far-projected-figures-look")
    },
    {
      "revisit_every_days",
      Messages.of("common.Days-between-visits"),
      Messages.of("setting.unit.days"),
      Messages.of("view.Setting.the-plan-a-device-not-seen")
    },
    {
      "groups_below",
      Messages.of("view.Setting.smallest-group-that-is-ranked"),
      Messages.of("setting.unit.devices"),
      Messages.of("view.Setting.groups-with-fewer-devices-are-shown")
    },
    {
      "watershed_digits",
      Messages.of("view.Setting.digits-of-watershed-codes"),
      Messages.of("setting.unit.digits"),
      Messages.of("view.Setting.level-at-which-watersheds-are-compared")
    },
    {
      "version",
      Messages.of("view.Setting.version"),
      Messages.of("setting.unit.name"),
      Messages.of("view.Setting.version-of-pondtally-that-made-the")
    },
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
            Messages.of("view.Setting.hectares-in-an-acre"),
            Double.toString(HECTARES_PER_ACRE),
            Messages.of("setting.unit.hectares"),
            Messages.of("view.Setting.constant-43-560-square-feet-of")));
    settings.add(
        new Setting(
            "Days_per_year",
            Messages.of("view.Setting.days-in-a-year"),
            Double.toString(DAYS_PER_YEAR),
            Messages.of("setting.unit.days"),
            Messages.of("view.Setting.constant-turns-ages-in-days-into")));
    return settings;
  }
}
