package pondtally.analysis;

import java.util.List;

/** What is added up over devices for benefit against cost. Dollars are of the base year. */
enum BenefitMeasure {
  /** Everything spent on devices of sites that count, up to the data cut. */
  COST_USD(true),
  /** Damage that verified functional time of those sites avoided. */
  BENEFIT_USD(true),
  /** Verified functional site-years of those sites. */
  SITE_YEARS(false),
  /** Devices whose building cost is known, and that cost. */
  BUILDS(true),
  BUILD_USD(true),
  /** Visits of known cost that neither repaired a failure nor replaced the device. */
  VISITS(true),
  VISIT_USD(true),
  /** Visits of known cost that put a failed device back to work. */
  REPAIRS(true),
  REPAIR_USD(true),
  /** Visits of known cost that replaced the device. */
  REPLACEMENTS(true),
  REPLACEMENT_USD(true),
  /** Devices at sites of known damage, and their share of a year's damage. */
  AT_DAMAGE(true),
  DAMAGE_USD(true),
  /** Paid hours at the labor rate within the costs above. */
  BUILD_LABOR_USD(false),
  VISIT_LABOR_USD(false),
  REPAIR_LABOR_USD(false),
  REPLACEMENT_LABOR_USD(false),
  /** Squares of the costs of visits, repairs and replacements, for their spread. */
  VISIT_USD_SQUARED(false),
  REPAIR_USD_SQUARED(false),
  REPLACEMENT_USD_SQUARED(false),
  /** Visits, repairs and replacements whose hours are recorded, paid or given, and those hours. */
  VISITS_TIMED(false),
  VISIT_HOURS(false),
  REPAIRS_TIMED(false),
  REPAIR_HOURS(false),
  REPLACEMENTS_TIMED(false),
  REPLACEMENT_HOURS(false),
  /** Failures ended by repair, and by replacement. */
  REPAIRED(false),
  REPLACED(false);

  /** All of them; asking for them anew makes a copy each time. */
  static final List<BenefitMeasure> ALL = List.of(values());

  private final boolean resampled;

  BenefitMeasure(boolean resampled) {
    this.resampled = resampled;
  }

  /** Whether it is added up in every resample as well. */
  boolean resampled() {
    return resampled;
  }
}
