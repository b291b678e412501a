package pondtally.sample;

import java.util.Locale;

/**
 * The kinds of fault of the input contract's list of checks, with what should happen, in a
 * partner's words.
 */
enum FaultKind {
  MISSING_REQUIRED("Required field empty", "The row is set aside."),
  UNREADABLE_NUMBER(
      "Number that cannot be read",
      "In a required field the row is set aside; in another the value is dropped."),
  UNREADABLE_DATE(
      "Date that cannot be read",
      "In a required field the row is set aside; in another the value is dropped."),
  AMBIGUOUS_DATE(
      "Date whose order nothing decides",
      "An error, never a guess: in a required field the row is set aside; in another the value is dropped."),
  DATE_FROM_TEXT(
      "Date written as text, order decided by the rest of its column",
      "Read; the row is used with a change."),
  UNKNOWN_CODE(
      "Unknown code",
      "Never corrected by likeness: in a required field the row is set aside; in another the value is dropped."),
  UNKNOWN_UNIT(
      "Unknown unit", "In a required field the row is set aside; in another the value is dropped."),
  UNIT_IN_VALUE("Unit given with the value", "Converted; the row is used with a change."),
  UNIT_IN_HEADING(
      "Unit given in the heading",
      "The whole column is converted; one line for the column, its count being the cells with no unit of their own."),
  OUT_OF_RANGE(
      "Out of the possible",
      "In a required field the row is set aside; in another the value is dropped."),
  VISIT_BEFORE_INSTALL("Visit before the device was installed", "The row is set aside."),
  DATE_IN_FUTURE(
      "Date after the data cut",
      "In a required field the row is set aside; in another the value is dropped."),
  DEVICE_WITHOUT_SITE("Device at a site that no sites table has", "The row is set aside."),
  MISSPELT_SITE(
      "Site id likely misspelt", "The row is set aside; the nearest id is named, never joined."),
  VISIT_WITHOUT_DEVICE("Visit to an unknown device", "The row is set aside."),
  COST_WITHOUT_DEVICE("Cost line for an unknown device", "The row is set aside."),
  DIFFERING_INSTALL(
      "Two installs of one device that differ",
      "The later file's row is set aside; both are named."),
  LIKELY_DUPLICATE(
      "Device listed by two partners under two ids",
      "Both rows are used and count as two devices until `aliases.csv` merges them; noticed."),
  EXACT_DUPLICATE(
      "Row given twice", "The first in file order is used; this one is a duplicate of it."),
  SAME_DAY_VISITS(
      "Two visits on one day that disagree",
      "The worse condition is used; this milder row is a duplicate of it."),
  VISIT_AFTER_RETIRED("Visit after the device was retired", "The row is set aside."),
  REMOVALS_TWICE(
      "Removals of one site and year counted by two partners",
      "The first in file order is used; this one is a duplicate of it."),
  PROPERTY_AT_TWO_SITES(
      "Property claimed at two sites", "Both rows are used and the property counts once; noticed."),
  WATERSHED_MISSING("Watershed missing", "The row is used; noticed."),
  WATERSHED_ODD_LENGTH(
      "Watershed code with an odd number of digits", "Kept as it stands, a lost digit is noticed."),
  DEVICE_WITHOUT_COST("Device with no cost of any kind", "Its cost is unknown, not zero; noticed."),
  DEVICE_NEVER_VISITED("Device never visited", "Its state is unverified; noticed."),
  AREA_NEVER_MEASURED(
      "Pond whose area was never measured", "Its area is unknown, not zero; noticed."),
  UNRECOGNISED("File or sheet that is no table of ours", "Not read, and reported.");

  private final String title;
  private final String expected;

  FaultKind(String title, String expected) {
    this.title = title;
    this.expected = expected;
  }

  String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  String title() {
    return title;
  }

  String expected() {
    return expected;
  }
}
