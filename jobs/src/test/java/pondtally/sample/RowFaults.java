package pondtally.sample;

import static pondtally.sample.Outcome.CHANGED;
import static pondtally.sample.Outcome.SET_ASIDE;
import static pondtally.sample.Partner.BRACKWEN;
import static pondtally.sample.Partner.LOWMARROW;
import static pondtally.sample.Partner.ORRENBY;
import static pondtally.sample.Partner.QUARRINDALE;
import static pondtally.sample.Partner.TESSARBY;

import java.time.LocalDate;
import java.util.function.Predicate;

/** Plants the faults that one row shows by itself. */
final class RowFaults {
  private final FaultBook book;
  private final Sheet orVisitsEarly;
  private final Sheet orVisits;
  private final Sheet orMaterials;
  private final Sheet orInstalls;
  private final Sheet qdMaterials;
  private final Sheet qdInstalls;
  private final Sheet qdWalks;
  private final Sheet qdVisits;
  private final Sheet bfVisits;
  private final Sheet bfInstalls;
  private final Sheet lmProperties;
  private final Sheet lmVisits;

  RowFaults(FaultBook book) {
    this.book = book;
    orVisitsEarly = book.sheet(ORRENBY, Table.REVISITS, "2017");
    orVisits = book.sheet(ORRENBY, Table.REVISITS, "2021");
    orMaterials = book.sheet(ORRENBY, Table.MATERIALS, "");
    orInstalls = book.sheet(ORRENBY, Table.INSTALLS, "");
    qdMaterials = book.sheet(QUARRINDALE, Table.MATERIALS, "");
    qdInstalls = book.sheet(QUARRINDALE, Table.INSTALLS, "");
    qdWalks = book.sheet(QUARRINDALE, Table.AREAS, "");
    qdVisits = book.sheet(QUARRINDALE, Table.REVISITS, "");
    bfVisits = book.sheet(BRACKWEN, Table.REVISITS, "");
    bfInstalls = book.sheet(BRACKWEN, Table.INSTALLS, "");
    lmProperties = book.sheet(LOWMARROW, Table.PROPERTIES, "");
    lmVisits = book.sheet(LOWMARROW, Table.REVISITS, "csv");
  }

  void plant() {
    missing();
    numbers();
    unreadableDates();
    ambiguousDates();
    codes();
    unknownUnits();
    unitsInValues();
    outOfRange();
    visitsBeforeInstall();
    futureDates();
  }

  private void missing() {
    FaultKind kind = FaultKind.MISSING_REQUIRED;
    set(orVisits, book::quiet, "condition", "", kind, SET_ASIDE);
    set(tessarbyVisits(2022), book::quiet, "visited_on", "", kind, SET_ASIDE);
    set(qdMaterials, item("fastener"), "quantity", "", kind, SET_ASIDE);
    set(tessarbyMaterials(2021), item("wire"), "item", "", kind, SET_ASIDE);
    set(
        bfInstalls,
        row -> book.visits(row.text("device_id")) == 0,
        "installed_on",
        "",
        kind,
        SET_ASIDE);
    set(book.sheet(ORRENBY, Table.REMOVALS, ""), row -> true, "year", "", kind, SET_ASIDE);
    set(lmProperties, row -> true, "property_id", "", kind, SET_ASIDE);
  }

  private void numbers() {
    FaultKind kind = FaultKind.UNREADABLE_NUMBER;
    set(orVisitsEarly, row -> book.quiet(row) && row.has("hours"), "hours", "two", kind, CHANGED);
    set(
        tessarbyVisits(2023),
        row -> book.quiet(row) && row.has("hours"),
        "hours",
        "about 1",
        kind,
        CHANGED);
    set(tessarbyMaterials(2019), item("fastener"), "quantity", "a few", kind, SET_ASIDE);
    set(qdWalks, row -> true, "acres", "small", kind, SET_ASIDE);
    Sheet sites = book.sheet(BRACKWEN, Table.SITES, "");
    set(
        sites,
        has("removals_per_year_before"),
        "removals_per_year_before",
        "several",
        kind,
        CHANGED);
    set(
        lmProperties,
        has("damage_per_year_usd"),
        "damage_per_year_usd",
        "ask owner",
        kind,
        CHANGED);
  }

  private void unreadableDates() {
    FaultKind kind = FaultKind.UNREADABLE_DATE;
    set(orVisits, book::quiet, "visited_on", "2024-02-31", kind, SET_ASIDE);
    set(tessarbyVisits(2020), book::quiet, "visited_on", "spring 2020", kind, SET_ASIDE);
    set(bfVisits, book::quiet, "visited_on", "2022-06-31", kind, SET_ASIDE);
    set(lmProperties, has("protected_from"), "protected_from", "last fall", kind, CHANGED);
    set(orMaterials, item("post"), "purchased_on", "before winter", kind, CHANGED);
  }

  private void ambiguousDates() {
    FaultKind kind = FaultKind.AMBIGUOUS_DATE;
    set(orVisitsEarly, book::quiet, "visited_on", "03/04/2019", kind, SET_ASIDE);
    set(tessarbyVisits(2024), book::quiet, "visited_on", "05/06/2024", kind, SET_ASIDE);
    set(qdMaterials, has("purchased_on"), "purchased_on", "07/08/2022", kind, CHANGED);
    set(
        book.sheet(BRACKWEN, Table.AREAS, ""),
        row -> true,
        "measured_on",
        "04/05/2023",
        kind,
        SET_ASIDE);
  }

  private void codes() {
    FaultKind kind = FaultKind.UNKNOWN_CODE;
    set(orVisits, book::quiet, "condition", "broken", kind, SET_ASIDE);
    set(tessarbyVisits(2019), book::quiet, "condition", "fine", kind, SET_ASIDE);
    set(bfVisits, book::quiet, "condition", "workng", kind, SET_ASIDE);
    set(qdMaterials, item("post"), "item", "gravel", kind, SET_ASIDE);
    set(qdInstalls, has("pipe_wall"), "pipe_wall", "triple", kind, CHANGED);
    set(orVisits, has("cause"), "cause", "muskrat", kind, CHANGED);
    set(
        book.sheet(TESSARBY, Table.SITES, ""),
        row -> true,
        "setting",
        "golf course",
        kind,
        CHANGED);
    set(
        book.sheet(LOWMARROW, Table.REMOVALS, ""),
        has("evidence"),
        "evidence",
        "hearsay",
        kind,
        CHANGED);
    set(
        bfVisits,
        row -> row.text("action").equals("cleaned") && !row.has("cause"),
        "action",
        "fixed",
        kind,
        CHANGED);
  }

  private void unknownUnits() {
    FaultKind kind = FaultKind.UNKNOWN_UNIT;
    set(orInstalls, has("pipe_diameter_in"), "pipe_diameter_in", "3 hands", kind, CHANGED);
    set(
        tessarbyInstalls(2019),
        has("pipe_length_ft"),
        "pipe_length_ft",
        "2 lengths",
        kind,
        CHANGED);
    set(qdWalks, row -> true, "acres", "3 rinks", kind, SET_ASIDE);
    set(lmVisits, has("wetland_acres"), "wetland_acres", "5 fields", kind, CHANGED);
    set(bfInstalls, has("pipe_length_ft"), "pipe_length_ft", "30 paces", kind, CHANGED);
  }

  private void unitsInValues() {
    FaultKind kind = FaultKind.UNIT_IN_VALUE;
    set(orInstalls, equal("pipe_diameter_in", "15"), "pipe_diameter_in", "380 mm", kind, CHANGED);
    set(orInstalls, equal("fence_diameter_ft", "5.0"), "fence_diameter_ft", "60 in", kind, CHANGED);
    set(
        tessarbyInstalls(2018),
        equal("pipe_diameter_in", "12"),
        "pipe_diameter_in",
        "12\"",
        kind,
        CHANGED);
    set(qdInstalls, equal("pipe_length_ft", "40"), "pipe_length_ft", "12.2 m", kind, CHANGED);
    set(bfInstalls, equal("pipe_length_ft", "20"), "pipe_length_ft", "6.1 m", kind, CHANGED);
    inHectares(qdWalks, "acres");
    inHectares(book.sheet(LOWMARROW, Table.REVISITS, "xlsx"), "wetland_acres");
  }

  private void inHectares(Sheet sheet, String field) {
    Row row = book.pick(sheet, has(field));
    String hectares = new Column(field, field, "ha").cell(row).text();
    book.spoil(sheet, row, field, Cell.of(hectares + " ha"), FaultKind.UNIT_IN_VALUE, CHANGED);
  }

  private void outOfRange() {
    FaultKind kind = FaultKind.OUT_OF_RANGE;
    number(book.sheet(ORRENBY, Table.SITES, ""), row -> true, "latitude", 140, CHANGED);
    number(orVisits, row -> book.quiet(row) && row.has("hours"), "hours", -2, CHANGED);
    number(tessarbyMaterials(2022), item("fastener"), "quantity", -4, SET_ASIDE);
    number(qdInstalls, equal("pipe_diameter_in", "12"), "pipe_diameter_in", 120, CHANGED);
    number(
        tessarbyInstalls(2021), equal("pipe_diameter_in", "12"), "pipe_diameter_in", 3000, CHANGED);
    number(bfVisits, row -> row.has("cost_usd") && row.has("hours"), "cost_usd", -45, CHANGED);
    number(lmProperties, has("damage_per_year_usd"), "damage_per_year_usd", -500, CHANGED);
    Sheet areas = book.sheet(ORRENBY, Table.AREAS, "");
    book.spoil(areas, book.pick(areas, row -> true), "acres", Cell.of(-1.5, 1), kind, SET_ASIDE);
  }

  private void visitsBeforeInstall() {
    FaultKind kind = FaultKind.VISIT_BEFORE_INSTALL;
    inYear(orVisits, book::quiet, "visited_on", 2012, kind, SET_ASIDE);
    inYear(tessarbyVisits(2021), book::quiet, "visited_on", 2012, kind, SET_ASIDE);
    inYear(qdVisits, book::quiet, "visited_on", 2002, kind, SET_ASIDE);
    inYear(bfVisits, book::quiet, "visited_on", 2012, kind, SET_ASIDE);
  }

  private void futureDates() {
    FaultKind kind = FaultKind.DATE_IN_FUTURE;
    inYear(orVisits, book::quiet, "visited_on", 2052, kind, SET_ASIDE);
    inYear(tessarbyVisits(2023), book::quiet, "visited_on", 2032, kind, SET_ASIDE);
    inYear(
        book.sheet(LOWMARROW, Table.REVISITS, "xlsx"),
        book::quiet,
        "visited_on",
        2102,
        kind,
        SET_ASIDE);
    inYear(qdWalks, row -> true, "measured_on", 2052, kind, SET_ASIDE);
    inYear(orMaterials, item("coupler"), "purchased_on", 2042, kind, CHANGED);
  }

  private void set(
      Sheet sheet, Predicate<Row> fits, String field, String bad, FaultKind kind, Outcome outcome) {
    book.spoil(sheet, book.pick(sheet, fits), field, Cell.of(bad), kind, outcome);
  }

  private void number(Sheet sheet, Predicate<Row> fits, String field, int bad, Outcome outcome) {
    book.spoil(sheet, book.pick(sheet, fits), field, Cell.of(bad), FaultKind.OUT_OF_RANGE, outcome);
  }

  /** The right day and month of a wrong year. */
  private void inYear(
      Sheet sheet, Predicate<Row> fits, String field, int year, FaultKind kind, Outcome outcome) {
    Row row = book.pick(sheet, fits);
    LocalDate day = row.day(field).withYear(year);
    book.spoil(sheet, row, field, Cell.of(day), kind, outcome);
  }

  private static Predicate<Row> item(String code) {
    return equal("item", code);
  }

  private static Predicate<Row> equal(String field, String text) {
    return row -> row.text(field).equals(text);
  }

  private static Predicate<Row> has(String field) {
    return row -> row.has(field);
  }

  private Sheet tessarbyVisits(int year) {
    return book.sheet(TESSARBY, Table.REVISITS, "Revisits " + year);
  }

  private Sheet tessarbyMaterials(int year) {
    return book.sheet(TESSARBY, Table.MATERIALS, "Materials " + year);
  }

  private Sheet tessarbyInstalls(int year) {
    return book.sheet(TESSARBY, Table.INSTALLS, "Installs " + year);
  }
}
