package pondtally.analysis;

import java.util.Locale;

/**
 * The additive figures of the result tables. Each names the column that its contributions add up
 * to; a unit cost, a share and a limit add up from nothing.
 */
public enum ContributionSubject {
  BUILD_USD("usd"),
  UPKEEP_USD("usd"),
  IN_KIND_USD("usd"),
  ESTIMATED_USD("usd"),
  VOLUNTEER_HOURS("hours"),
  LINES_BEFORE_INDEX("lines"),
  BEFORE_INDEX_NOMINAL_USD("nominal usd"),
  LINES_INDEX_PROVISIONAL("lines"),
  INDEX_PROVISIONAL_USD("usd"),
  DEVICES("devices"),
  DEVICES_COSTED("devices"),
  TO_DATE_COST_USD("usd"),
  TO_DATE_BENEFIT_USD("usd"),
  FUNDING_CASH_USD("nominal usd"),
  FUNDING_IN_KIND_USD("nominal usd"),
  FUNDING_VOLUNTEER_USD("nominal usd"),
  FUNDING_MATCH_CASH_USD("nominal usd"),
  FAILURES("failures"),
  DEVICE_YEARS("device-years"),
  LIVES("lives"),
  FIRST_FAILURES("failures"),
  LIFE_YEARS("device-years"),
  VERIFIED_DAYS("days"),
  FUNCTIONAL_DAYS("days"),
  ACRE_YEARS("acre-years"),
  ACRE_YEARS_EXTRAPOLATED("acre-years"),
  ACRES_BEFORE("acres"),
  ACRES_RETAINED_VERIFIED("acres"),
  ACRES_RETAINED_UNVERIFIED("acres"),
  ACRES_LOST_TO_LOWERING("acres"),
  PROPERTIES_PROTECTED("properties"),
  PROPERTY_YEARS("property-years"),
  REMOVALS_AVOIDED("removals"),
  REMOVALS_CLAIMED("removals"),
  REMOVALS_REPORTED("removals");

  private final String unit;

  private final String code = name().toLowerCase(Locale.ROOT);

  ContributionSubject(String unit) {
    this.unit = unit;
  }

  /** As written in the result table. */
  public String code() {
    return code;
  }

  /** Whether it is what a funder paid or may claim, by budget period. */
  boolean isFunding() {
    return name().startsWith("FUNDING_");
  }

  /** Unit of its amounts. */
  public String unit() {
    return unit;
  }
}
