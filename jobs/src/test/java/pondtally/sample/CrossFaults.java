package pondtally.sample;

import static pondtally.sample.Outcome.DUPLICATE;
import static pondtally.sample.Outcome.SET_ASIDE;
import static pondtally.sample.Partner.BRACKWEN;
import static pondtally.sample.Partner.LOWMARROW;
import static pondtally.sample.Partner.ORRENBY;
import static pondtally.sample.Partner.QUARRINDALE;
import static pondtally.sample.Partner.TESSARBY;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Plants the faults about sites, devices and visits that only show when rows are held against each
 * other.
 */
final class CrossFaults {
  private final FaultBook book;
  private final World world;
  private final Set<String> changing;

  CrossFaults(FaultBook book, World world) {
    this.book = book;
    this.world = world;
    changing =
        world.histories().stream()
            .filter(CrossFaults::changes)
            .map(h -> h.device().id())
            .collect(Collectors.toSet());
  }

  /** Whether a later install row could be a next life's. */
  private static boolean changes(History history) {
    return history.retiredOn() != null
        || history.visits().stream()
            .anyMatch(
                v ->
                    v.condition().equals("retired")
                        || Set.of("replaced", "removed").contains(v.action()));
  }

  void plant() {
    withoutSite();
    misspeltSites();
    withoutDevice();
    differingInstalls();
    exactDuplicates();
    sameDayVisits();
    visitsAfterRetired();
  }

  private void withoutSite() {
    Sheet orInstalls = book.sheet(ORRENBY, Table.INSTALLS, "");
    newDevice(
        orInstalls,
        "OR-090-A",
        "MILL-ROAD",
        LocalDate.of(2023, 6, 14),
        FaultKind.DEVICE_WITHOUT_SITE);
    Row visit =
        new Row().with("device_id", "OR-090-A").with("visited_on", LocalDate.of(2024, 5, 8));
    visit.with("condition", "working").with("action", "none").with("hours", 0.75, 2);
    Sheet orVisits = book.sheet(ORRENBY, Table.REVISITS, "2021");
    book.insert(
        orVisits,
        visit,
        "visited_on",
        "device_id",
        FaultKind.VISIT_WITHOUT_DEVICE,
        SET_ASIDE,
        null,
        null);
    Sheet tvInstalls = book.sheet(TESSARBY, Table.INSTALLS, "Installs 2022");
    newDevice(
        tvInstalls,
        "TV-090-A",
        "LOWER-FORD",
        LocalDate.of(2022, 9, 6),
        FaultKind.DEVICE_WITHOUT_SITE);
    Sheet lmInstalls = book.sheet(LOWMARROW, Table.INSTALLS, "csv");
    newDevice(
        lmInstalls,
        "LM-090-A",
        "FEN-GATE",
        LocalDate.of(2024, 7, 23),
        FaultKind.DEVICE_WITHOUT_SITE);
    Row line =
        new Row()
            .with("device_id", "LM-090-A")
            .with("item", "pipe")
            .with("quantity", 40)
            .with("unit", "ft");
    Sheet lmMaterials = book.sheet(LOWMARROW, Table.MATERIALS, "csv");
    book.insert(
        lmMaterials,
        line.with("total_cost_usd", 612.40, 2),
        "device_id",
        "device_id",
        FaultKind.COST_WITHOUT_DEVICE,
        SET_ASIDE,
        null,
        null);
  }

  private void newDevice(
      Sheet sheet, String deviceId, String siteId, LocalDate on, FaultKind kind) {
    Row row =
        new Row().with("device_id", deviceId).with("site_id", siteId).with("installed_on", on);
    row.with("device_kind", "pond-leveler").with("pipe_wall", "dual").with("pipe_diameter_in", 12);
    row.with("pipe_length_ft", 40).with("fence_form", "panel").with("labor_hours", 18.5, 1);
    book.insert(sheet, row, "device_id", "site_id", kind, SET_ASIDE, null, null);
  }

  private void misspeltSites() {
    misspell(book.sheet(QUARRINDALE, Table.PROPERTIES, ""));
    misspell(book.sheet(TESSARBY, Table.REMOVALS, ""));
    misspell(book.sheet(BRACKWEN, Table.AREAS, ""));
    Sheet installs = book.sheet(TESSARBY, Table.INSTALLS, "Installs 2023");
    newDevice(installs, "TV-012-Z", "TV-O12", LocalDate.of(2023, 8, 17), FaultKind.MISSPELT_SITE);
  }

  /** The letter O in place of the first zero. */
  private void misspell(Sheet sheet) {
    Row row = book.pick(sheet, r -> r.has("site_id"));
    Cell bad = Cell.of(row.text("site_id").replaceFirst("0", "O"));
    book.spoil(sheet, row, "site_id", bad, FaultKind.MISSPELT_SITE, SET_ASIDE);
  }

  private void withoutDevice() {
    strayVisit(book.sheet(ORRENBY, Table.REVISITS, "2021"), "OR-177-B");
    strayVisit(book.sheet(QUARRINDALE, Table.REVISITS, ""), "QD-T99");
    strayVisit(book.sheet(BRACKWEN, Table.REVISITS, ""), "BF-D88");
    strayVisit(book.sheet(TESSARBY, Table.REVISITS, "2025"), "TV-160-C");
    strayLine(book.sheet(ORRENBY, Table.MATERIALS, ""), "OR-177-B");
    strayLine(book.sheet(TESSARBY, Table.MATERIALS, "2023"), "TV-160-C");
    strayLine(book.sheet(LOWMARROW, Table.MATERIALS, "xlsx"), "LM-170-A");
    strayLine(book.sheet(QUARRINDALE, Table.MATERIALS, ""), "QD-T99");
  }

  private void strayVisit(Sheet sheet, String deviceId) {
    Row row = book.pick(sheet, book::quiet);
    book.spoil(
        sheet, row, "device_id", Cell.of(deviceId), FaultKind.VISIT_WITHOUT_DEVICE, SET_ASIDE);
  }

  private void strayLine(Sheet sheet, String deviceId) {
    Row row = book.pick(sheet, r -> r.text("item").equals("wire"));
    book.spoil(
        sheet, row, "device_id", Cell.of(deviceId), FaultKind.COST_WITHOUT_DEVICE, SET_ASIDE);
  }

  private void differingInstalls() {
    Sheet orrenby = book.sheet(ORRENBY, Table.INSTALLS, "");
    Sheet tessarby2021 = book.sheet(TESSARBY, Table.INSTALLS, "Installs 2021");
    Row ours = book.pick(orrenby, row -> steady(row) && row.day("installed_on").getYear() == 2021);
    Row theirs = shortCopy(ours).with("installed_on", ours.day("installed_on").plusDays(4));
    differ(tessarby2021, theirs, "installed_on", orrenby, ours);

    Sheet lowmarrow = book.sheet(LOWMARROW, Table.INSTALLS, "xlsx");
    Row fen = book.pick(lowmarrow, row -> steady(row) && row.text("pipe_diameter_in").equals("12"));
    differ(
        orrenby, shortCopy(fen).with("pipe_diameter_in", 15), "pipe_diameter_in", lowmarrow, fen);

    Sheet recent = book.sheet(LOWMARROW, Table.INSTALLS, "csv");
    Row late = book.pick(recent, this::steady);
    Row earlier = shortCopy(late).with("installed_on", late.day("installed_on").minusDays(9));
    differ(lowmarrow, earlier, "installed_on", recent, late);

    Sheet tessarby2022 = book.sheet(TESSARBY, Table.INSTALLS, "Installs 2022");
    Sheet tessarby2024 = book.sheet(TESSARBY, Table.INSTALLS, "Installs 2024");
    Row first =
        book.pick(tessarby2022, row -> steady(row) && !row.text("pipe_wall").equals("smooth"));
    differ(
        tessarby2024,
        shortCopy(first).with("pipe_wall", "smooth"),
        "pipe_wall",
        tessarby2022,
        first);
  }

  private boolean steady(Row row) {
    return !changing.contains(row.text("device_id"));
  }

  private static Row shortCopy(Row row) {
    Row copy = new Row();
    for (String field :
        List.of(
            "device_id",
            "site_id",
            "installed_on",
            "device_kind",
            "pipe_wall",
            "pipe_diameter_in",
            "crew")) {
      copy.with(field, row.get(field));
    }
    return copy;
  }

  private void differ(Sheet later, Row copy, String field, Sheet earlier, Row original) {
    book.insert(
        later, copy, "device_id", field, FaultKind.DIFFERING_INSTALL, SET_ASIDE, earlier, original);
  }

  private void exactDuplicates() {
    Sheet workbook = book.sheet(LOWMARROW, Table.REVISITS, "xlsx");
    Sheet export = book.sheet(LOWMARROW, Table.REVISITS, "csv");
    for (int i = 0; i < 3; i++) {
      Row row = book.pick(workbook, r -> book.quiet(r) && r.day("visited_on").getYear() == 2022);
      repeat(export, "visited_on", workbook, row);
    }
    Sheet orVisits = book.sheet(ORRENBY, Table.REVISITS, "2021");
    Row shared = book.pick(orVisits, r -> book.quiet(r) && r.day("visited_on").getYear() == 2023);
    repeat(book.sheet(TESSARBY, Table.REVISITS, "2023"), "visited_on", orVisits, shared);
    repeatAny(book.sheet(ORRENBY, Table.MATERIALS, ""), "device_id");
    repeatAny(book.sheet(QUARRINDALE, Table.SITES, ""), "site_id");
    repeatAny(book.sheet(BRACKWEN, Table.EXPENSES, ""), "date");
    repeatAny(book.sheet(TESSARBY, Table.PROPERTIES, ""), "property_id");
  }

  private void repeatAny(Sheet sheet, String orderedBy) {
    repeat(sheet, orderedBy, sheet, book.pick(sheet, row -> true));
  }

  private void repeat(Sheet into, String orderedBy, Sheet from, Row row) {
    book.insert(into, row.copy(), orderedBy, null, FaultKind.EXACT_DUPLICATE, DUPLICATE, from, row);
  }

  private void sameDayVisits() {
    milder(book.sheet(ORRENBY, Table.REVISITS, "2021"), "working");
    milder(book.sheet(TESSARBY, Table.REVISITS, "2022"), "working");
    milder(book.sheet(QUARRINDALE, Table.REVISITS, ""), "reduced");
    milder(book.sheet(BRACKWEN, Table.REVISITS, ""), "working");
  }

  private void milder(Sheet sheet, String condition) {
    Row failed = book.pick(sheet, row -> row.text("condition").equals("failed"));
    Row other =
        new Row()
            .with("device_id", failed.get("device_id"))
            .with("visited_on", failed.get("visited_on"));
    other.with("condition", condition).with("action", "none");
    book.insert(
        sheet,
        other,
        "visited_on",
        "condition",
        FaultKind.SAME_DAY_VISITS,
        DUPLICATE,
        sheet,
        failed);
  }

  private void visitsAfterRetired() {
    for (Partner partner : List.of(ORRENBY, TESSARBY, QUARRINDALE, BRACKWEN, LOWMARROW)) {
      world.histories().stream()
          .filter(history -> history.device().site().partner() == partner)
          .filter(history -> history.retiredOn() != null)
          .filter(history -> history.retiredOn().getYear() < 2025)
          .findFirst()
          .ifPresent(this::visitRetired);
    }
  }

  private void visitRetired(History history) {
    LocalDate day = history.retiredOn().plusDays(75);
    Partner partner = history.device().site().partner();
    Sheet sheet =
        book.sheets(Table.REVISITS).stream()
            .filter(s -> s.partner() == partner && covers(s, day))
            .findFirst()
            .orElseThrow();
    Row visit = new Row().with("device_id", history.device().id()).with("visited_on", day);
    visit.with("condition", "working").with("action", "none");
    book.insert(
        sheet,
        visit,
        "visited_on",
        "visited_on",
        FaultKind.VISIT_AFTER_RETIRED,
        SET_ASIDE,
        null,
        null);
  }

  private static boolean covers(Sheet sheet, LocalDate day) {
    List<Integer> years =
        sheet.rows().stream()
            .filter(row -> row.has("visited_on"))
            .map(row -> row.day("visited_on").getYear())
            .toList();
    return years.contains(day.getYear());
  }
}
