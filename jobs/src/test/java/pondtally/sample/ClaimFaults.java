package pondtally.sample;

import static pondtally.sample.Outcome.DUPLICATE;
import static pondtally.sample.Outcome.NOTICE;
import static pondtally.sample.Outcome.SET_ASIDE;
import static pondtally.sample.Partner.BRACKWEN;
import static pondtally.sample.Partner.LOWMARROW;
import static pondtally.sample.Partner.ORRENBY;
import static pondtally.sample.Partner.QUARRINDALE;
import static pondtally.sample.Partner.TESSARBY;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Plants the faults about removals, properties and watersheds that only show across rows. */
final class ClaimFaults {
  private final FaultBook book;
  private final Map<String, Site> sites = new HashMap<>();

  ClaimFaults(FaultBook book, World world) {
    this.book = book;
    world.sites().forEach(site -> sites.put(site.id(), site));
  }

  void plant() {
    removalsTwice();
    propertiesAtTwoSites();
    watersheds();
  }

  private void removalsTwice() {
    claim(LOWMARROW, ORRENBY, 0);
    claim(ORRENBY, TESSARBY, 0);
    claim(BRACKWEN, LOWMARROW, 0);
    claim(ORRENBY, TESSARBY, 1);
  }

  /**
   * The second partner counts the first one's site too, from another source, and so many animals
   * more.
   */
  private void claim(Partner first, Partner second, int more) {
    Sheet theirs = book.sheet(first, Table.REMOVALS, "");
    Row row = book.pick(theirs, r -> r.has("evidence") && !r.has("avoided"));
    Row again = row.copy().with("evidence", row.text("evidence").equals("log") ? "invoice" : "log");
    again.with("removals", Long.parseLong(row.text("removals")) + more);
    Sheet own = book.sheet(second, Table.REMOVALS, "");
    Outcome outcome = more == 0 ? DUPLICATE : SET_ASIDE;
    book.insert(own, again, "year", "year", FaultKind.REMOVALS_TWICE, outcome, theirs, row);
  }

  private void propertiesAtTwoSites() {
    claimAtNeighbor(book.sheet(ORRENBY, Table.PROPERTIES, ""));
    claimAtNeighbor(book.sheet(TESSARBY, Table.PROPERTIES, ""));
    claimAtNeighbor(book.sheet(LOWMARROW, Table.PROPERTIES, ""));
    claimAtNeighbor(book.sheet(QUARRINDALE, Table.PROPERTIES, ""));
  }

  private void claimAtNeighbor(Sheet sheet) {
    Row row = book.pick(sheet, r -> r.has("damage_per_year_usd") && neighbor(r) != null);
    Row again = row.copy().with("site_id", neighbor(row).id());
    book.insert(
        sheet,
        again,
        "property_id",
        "property_id",
        FaultKind.PROPERTY_AT_TWO_SITES,
        NOTICE,
        sheet,
        row);
  }

  /** The next site of that partner in the same watershed, null if there is none. */
  private Site neighbor(Row row) {
    Site site = sites.get(row.text("site_id"));
    List<Site> others =
        sites.values().stream()
            .filter(Site::hasDevice)
            .filter(s -> s.partner() == site.partner() && s.watershed().equals(site.watershed()))
            .filter(s -> s.id().compareTo(site.id()) > 0)
            .sorted((a, b) -> a.id().compareTo(b.id()))
            .toList();
    return others.isEmpty() ? null : others.get(0);
  }

  private void watersheds() {
    Sheet orrenby = book.sheet(ORRENBY, Table.SITES, "");
    Sheet tessarby = book.sheet(TESSARBY, Table.SITES, "");
    Sheet brackwen = book.sheet(BRACKWEN, Table.SITES, "");
    Sheet quarrindale = book.sheet(QUARRINDALE, Table.SITES, "");
    List.of(orrenby, tessarby, brackwen).forEach(this::loseWatershed);
    loseWatershed(orrenby);
    List.of(orrenby, quarrindale, tessarby).forEach(this::loseDigit);
  }

  private void loseWatershed(Sheet sheet) {
    Row row = ownPond(sheet);
    book.spoil(sheet, row, "watershed", Cell.blank(), FaultKind.WATERSHED_MISSING, NOTICE);
  }

  private void loseDigit(Sheet sheet) {
    Row row = ownPond(sheet);
    String code = row.text("watershed");
    Cell bad = Cell.of(code.substring(0, code.length() - 1));
    book.spoil(sheet, row, "watershed", bad, FaultKind.WATERSHED_ODD_LENGTH, NOTICE);
  }

  private Row ownPond(Sheet sheet) {
    return book.pick(
        sheet, row -> !row.has("pond_id") && sites.get(row.text("site_id")).hasDevice());
  }
}
