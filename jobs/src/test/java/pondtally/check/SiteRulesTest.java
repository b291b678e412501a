package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import pondtally.record.Area;
import pondtally.record.Evidence;
import pondtally.record.Origin;
import pondtally.record.Property;
import pondtally.record.PropertyType;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;

class SiteRulesTest {

  private static Removal removal(int row, String partner, Double removals, Double avoided) {
    return TestRow.of(
        Removal.class,
        row,
        "partner",
        partner,
        "siteId",
        "S1",
        "year",
        2024,
        "removals",
        removals,
        "avoided",
        avoided);
  }

  private static Property property(int row, String site, Object... more) {
    Object[] fields = new Object[4 + more.length];
    System.arraycopy(new Object[] {"propertyId", "P1", "siteId", site}, 0, fields, 0, 4);
    System.arraycopy(more, 0, fields, 4, more.length);
    return TestRow.of(Property.class, row, fields);
  }

  @Test
  void siteDescribedTwice() {
    Site other =
        TestRow.at(
            Site.class,
            new Origin(6, 0, 12, false),
            "siteId",
            "S1",
            "watershed",
            "99010204",
            "wetlandAcresBefore",
            2.0,
            "county",
            "Alder",
            "town",
            "Reed",
            "roadId",
            "R7");
    TestCluster.sound(other)
        .finds(
            "sites 12 site_id=S1 set-aside site-differs: Site \"S1\" is described"
                + " differently"
                + " in another row ({row:1/0/2}): watershed (\"99010203\" there,"
                + " \"99010204\" here),"
                + " county (nothing there, \"Alder\" here), town (nothing there,"
                + " \"Reed\" here) and 1"
                + " more field. That row comes first and is used; this one was set"
                + " aside. Make the"
                + " two agree, or delete one; if they are two places, give each an id of"
                + " its own.")
        .judges("12 SET_ASIDE");
  }

  @Test
  void sameRowFromTwoPartnersIsADuplicate() {
    Site copy =
        TestRow.of(
            Site.class,
            12,
            "partner",
            "south",
            "siteId",
            "S1",
            "watershed",
            "99010203",
            "wetlandAcresBefore",
            2.0);
    TestCluster.sound(copy)
        .finds(
            "sites 2 - notice duplicate-row: Every field is the same as in"
                + " {row:0/0/12}. The"
                + " row is counted once, there. Delete this copy; if it is no copy,"
                + " write what tells"
                + " the two rows apart.")
        .judges("2 DUPLICATE");
  }

  @Test
  void watershedMissing() {
    TestCluster.sound(TestRow.of(Site.class, 12, "siteId", "S2", "pondId", "S1"))
        .finds(
            "sites 12 watershed= notice watershed-missing: Site \"S2\" has no"
                + " watershed. It"
                + " counts in the totals, but in no watershed's figures. Add the hydrologic unit"
                + " code.")
        .judges();
  }

  @Test
  void pondNeverMeasured() {
    Site site = TestRow.of(Site.class, 2, "siteId", "S1", "watershed", "99010203");
    TestCluster.of(site, TestCluster.soundInstall(), TestCluster.soundVisit())
        .finds(
            "sites 2 wetland_acres_before= notice pond-never-measured: The wetland of pond"
                + " \"S1\" was never measured: no area before, none at a visit, none in"
                + " areas. The"
                + " pond is left out of acres. Measure it at the agreed level.")
        .judges();
  }

  @Test
  void aMeasuredAreaOfThePondIsEnough() {
    Site site = TestRow.of(Site.class, 2, "siteId", "S1", "watershed", "99010203", "pondId", "P");
    Area area = TestRow.of(Area.class, 9, "pondId", "P", "measuredOn", "2021-01-01", "acres", 3.0);
    TestCluster.of(site, TestCluster.soundInstall(), TestCluster.soundVisit(), area)
        .finds()
        .judges();
  }

  @Test
  void rowsAboutAnUnknownSite() {
    TestCluster.of(
            removal(5, "north", 2.0, null),
            property(6, "S1"),
            TestRow.of(Area.class, 7, "siteId", "S1", "measuredOn", "2021-01-01"),
            TestRow.of(Request.class, 8, "siteId", "S1", "askedOn", "2021-01-01"))
        .finds(
            unknownSite("removals 5", "The removals have"),
            unknownSite("properties 6", "The property has"),
            unknownSite("areas 7", "The area has"))
        .judges("5 SET_ASIDE", "6 SET_ASIDE", "7 SET_ASIDE");
  }

  private static String unknownSite(String place, String what) {
    return place
        + " site_id=S1 set-aside unknown-site: "
        + what
        + " no site: no sites row that counts has the id \"S1\". The"
        + " row was set"
        + " aside. Correct the id, or add the site (or correct its row, if that was set"
        + " aside).";
  }

  @Test
  void areaOfAnUnknownPond() {
    TestCluster.sound(TestRow.of(Area.class, 7, "pondId", "P7", "measuredOn", "2021-01-01"))
        .finds(
            "areas 7 pond_id=P7 set-aside unknown-pond: No row of sites that could be used"
                + " names the pond \"P7\". The row was set aside. Correct the id, or write it as"
                + " pond_id in the row of the site that drains the pond.")
        .judges("7 SET_ASIDE");
  }

  @Test
  void areaThatNamesAnotherPondThanItsSite() {
    TestCluster.sound(
            TestRow.of(Area.class, 7, "siteId", "S1", "pondId", "P7", "measuredOn", "2021-01-01"))
        .finds(
            "areas 7 pond_id=P7 set-aside area-pond-differs: Site \"S1\" drains the pond"
                + " \"S1\", not \"P7\", so it is not clear which pond was measured. The"
                + " row was set"
                + " aside. Correct one of the two ids, or leave one empty.")
        .judges("7 SET_ASIDE");
  }

  @Test
  void areaAndRequestAfterTheCut() {
    TestCluster.sound(
            TestRow.of(Area.class, 7, "siteId", "S1", "measuredOn", "2027-01-01"),
            TestRow.of(Request.class, 8, "siteId", "S1", "askedOn", "2027-01-01"))
        .finds(
            "areas 7 measured_on=2027-01-01 set-aside date-after-cut: 2027-01-01 is in the"
                + " future (this check was run on 2026-03-10). The row was set aside."
                + " Correct the"
                + " date.",
            "requests 8 asked_on=2027-01-01 set-aside date-after-cut: 2027-01-01 is in the"
                + " future (this check was run on 2026-03-10). The row was set aside."
                + " Correct the"
                + " date.")
        .judges("7 SET_ASIDE", "8 SET_ASIDE");
  }

  @Test
  void requestSinceTheCutStays() {
    TestCluster.sound(TestRow.of(Request.class, 8, "siteId", "S9", "askedOn", "2026-02-01"))
        .finds()
        .judges();
  }

  @Test
  void areaOfNoPlace() {
    TestCluster.sound(TestRow.of(Area.class, 7, "measuredOn", "2021-01-01", "acres", 1.0))
        .finds(
            "areas 7 - set-aside area-without-place: Neither a site nor a pond is"
                + " named, so it"
                + " is not known what was measured. The row was set aside. Add site_id"
                + " or pond_id.")
        .judges("7 SET_ASIDE");
  }

  @Test
  void removalsOfYearsAfterTheCut() {
    TestCluster.sound(
            TestRow.of(Removal.class, 7, "siteId", "S1", "year", 2026, "removals", 1.0),
            TestRow.of(Removal.class, 8, "siteId", "S1", "year", 2042, "removals", 1.0))
        .finds(
            "removals 7 year=2026 set-aside date-after-cut: 2026 is after the data cut of"
                + " 2025-12-31, so the row is not counted and was set aside. If the date"
                + " is wrong,"
                + " correct it; if it is right, set as_of in program.yaml to a day of"
                + " 2026 or later"
                + " to count the row.",
            "removals 8 year=2042 set-aside date-after-cut: 2042 is in the future"
                + " (this check"
                + " was run on 2026-03-10). The row was set aside. Correct the date.")
        .judges("7 SET_ASIDE", "8 SET_ASIDE");
  }

  @Test
  void removalsByTwoPartnersThatAgree() {
    Removal second =
        TestRow.of(
            Removal.class,
            8,
            "partner",
            "south",
            "siteId",
            "S1",
            "year",
            2024,
            "removals",
            3.0,
            "evidence",
            Evidence.LOG);
    TestCluster.sound(removal(7, "north", 3.0, null), second)
        .finds(
            "removals 8 year=2024 notice removals-counted-twice: Another partner"
                + " gives the same"
                + " numbers for site \"S1\" in 2024 ({row:0/0/7}). They are counted once, there."
                + " Agree which partner reports this site.")
        .judges("8 DUPLICATE");
  }

  @Test
  void removalsByTwoPartnersThatDisagree() {
    TestCluster.sound(removal(7, "north", 3.0, null), removal(8, "south", 4.0, 2.0))
        .finds(
            "removals 8 year=2024 set-aside removals-counted-twice: Another"
                + " partner gives other"
                + " numbers for site \"S1\" in 2024: 3 removed there ({row:0/0/7}), 4"
                + " removed and 2"
                + " avoided here. That row comes first and is used; this one was set"
                + " aside. Agree"
                + " which is right, and which partner reports this site.")
        .judges("8 SET_ASIDE");
  }

  @Test
  void removedByOneAndAvoidedByTheOtherDoNotOverlap() {
    TestCluster.sound(removal(7, "north", 3.0, null), removal(8, "south", null, 2.0))
        .finds()
        .judges();
  }

  @Test
  void severalRowsOfOnePartnerAreParts() {
    TestCluster.sound(removal(7, "north", 3.0, null), removal(8, "north", 4.0, null))
        .finds(
            "removals 8 year=2024 notice several-removal-rows: Site \"S1\" has"
                + " another row for"
                + " 2024 from the same partner ({row:0/0/7}). Both are counted, as two"
                + " parts of the"
                + " year. If one is a correction of the other, delete the wrong one.")
        .judges();
  }

  @Test
  void propertyTwiceAtASite() {
    TestCluster.sound(
            property(7, "S1", "propertyType", PropertyType.HOME),
            property(8, "S1", "propertyType", PropertyType.WELL, "damagePerYearUsd", 500.0))
        .finds(
            "properties 8 property_id=P1 notice property-repeated: Property \"P1\" at site"
                + " \"S1\" already stands in {row:0/0/7}, with other values: property_type (home"
                + " there, well here) and damage_per_year_usd (nothing there, 500 here). It is"
                + " counted once, as that row says. Delete one row; if these are two"
                + " properties, give"
                + " each an id of its own.")
        .judges("8 DUPLICATE");
  }

  @Test
  void propertyAtTwoSites() {
    Site second =
        TestRow.of(Site.class, 5, "siteId", "S2", "watershed", "99010203", "pondId", "S1");
    TestCluster.sound(second, property(7, "S1"), property(8, "S2"))
        .finds(
            "properties 8 property_id=P1 notice property-at-two-sites: Property"
                + " \"P1\" also"
                + " stands under site \"S1\" ({row:0/0/7}). It is counted once, as"
                + " protected while a"
                + " device at either site works. If these are two properties, give each"
                + " an id of its"
                + " own.")
        .judges();
  }

  @Test
  void protectionThatEndsBeforeItBegins() {
    TestCluster cluster =
        TestCluster.sound(
            property(7, "S1", "protectedFrom", "2022-01-01", "protectedUntil", "2021-01-01"));
    cluster
        .finds(
            "properties 7 protected_until=2021-01-01 changed protected-until-before-from:"
                + " 2021-01-01 is before the first protected day, 2022-01-01. The date"
                + " was dropped:"
                + " the property counts as still protected. Correct whichever date is wrong.")
        .judges("7 CHANGED");
    assertNull(cluster.checked().kept().properties().get(0).protectedUntil());
  }
}
