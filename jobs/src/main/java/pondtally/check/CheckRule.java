package pondtally.check;

import pondtally.record.Code;

/**
 * Names of the rules that need more than one row, or more than one field of a row. Rules about a
 * single cell belong to reading.
 */
public enum CheckRule implements Code {
  /** A row that repeats an earlier one in every field. */
  DUPLICATE_ROW("duplicate-row"),
  /** A date after the data cut, or in the future. */
  DATE_AFTER_CUT("date-after-cut"),
  /** A second row for a site that says something else. */
  SITE_DIFFERS("site-differs"),
  /** A row about a site that no row of sites describes. */
  UNKNOWN_SITE("unknown-site"),
  /** An area of a pond that no site drains. */
  UNKNOWN_POND("unknown-pond"),
  /** An area that names neither a site nor a pond. */
  AREA_WITHOUT_PLACE("area-without-place"),
  /** An area that names a site and a pond which do not belong together. */
  AREA_POND_DIFFERS("area-pond-differs"),
  /** A visit or cost line of a device that no install row names. */
  UNKNOWN_DEVICE("unknown-device"),
  /** A visit or cost line of a device whose install row was set aside. */
  DEVICE_SET_ASIDE("device-set-aside"),
  /** A second install row for the same life of a device. */
  INSTALL_DIFFERS("install-differs"),
  /** A later install row of a device, at another site. */
  DEVICE_AT_TWO_SITES("device-at-two-sites"),
  /** A device retired after the data cut: not yet. */
  RETIRED_AFTER_CUT("retired-after-cut"),
  /** A device retired before it was installed. */
  RETIRED_BEFORE_INSTALL("retired-before-install"),
  /** A device followed from a day before it was installed. */
  TRACKED_BEFORE_INSTALL("tracked-before-install"),
  /** A device followed only from a day after the data cut. */
  TRACKED_AFTER_CUT("tracked-after-cut"),
  /** A visit before the first install of the device. */
  VISIT_BEFORE_INSTALL("visit-before-install"),
  /** A visit after the device was retired or removed. */
  VISIT_AFTER_END("visit-after-end"),
  /** Several rows for one device and day. */
  SAME_DAY_VISITS("same-day-visits"),
  /** A failure found on the day the device came under observation. */
  FAILED_ON_ENTRY_DAY("failed-on-entry-day"),
  /** Removals of a site and year from a second partner. */
  REMOVALS_COUNTED_TWICE("removals-counted-twice"),
  /** Several counts of a site and year from one partner. */
  SEVERAL_REMOVAL_ROWS("several-removal-rows"),
  /** A second row for a property at the same site. */
  PROPERTY_REPEATED("property-repeated"),
  /** A property under two sites. */
  PROPERTY_AT_TWO_SITES("property-at-two-sites"),
  /** A property whose protection ends before it begins. */
  PROTECTED_UNTIL_BEFORE_FROM("protected-until-before-from"),
  /** A site without a watershed. */
  WATERSHED_MISSING("watershed-missing"),
  /** A material line that holds neither a unit cost nor a total. */
  COST_MISSING("cost-missing"),
  /** A total that is not quantity times unit cost. */
  COST_INCONSISTENT("cost-inconsistent"),
  /** A lump sum beside material lines that come to something else. */
  LUMP_SUM_BESIDE_LINES("lump-sum-beside-lines"),
  /** A device without any cost. */
  DEVICE_WITHOUT_COST("device-without-cost"),
  /** A device without any visit. */
  DEVICE_NEVER_VISITED("device-never-visited"),
  /** A pond without any measured area. */
  POND_NEVER_MEASURED("pond-never-measured"),
  /** Two ids that may be one device. */
  LIKELY_DUPLICATE("likely-duplicate"),
  /** More than a tenth of a sheet's rows were set aside. */
  MANY_ROWS_SET_ASIDE("many-rows-set-aside");

  private final String code;

  CheckRule(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
