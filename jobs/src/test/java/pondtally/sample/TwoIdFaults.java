package pondtally.sample;

import static pondtally.sample.Partner.BRACKWEN;
import static pondtally.sample.Partner.LOWMARROW;
import static pondtally.sample.Partner.ORRENBY;
import static pondtally.sample.Partner.QUARRINDALE;
import static pondtally.sample.Partner.TESSARBY;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Plants devices that a second partner lists too, under a number of its own: it came to help, wrote
 * down what it put in, and went back seldom or never. The second account stands in a later file, so
 * that merging keeps the fuller one.
 */
final class TwoIdFaults {
  private static final int DAYS_APART = 14;

  private final FaultBook book;
  private final World world;
  private final Set<String> steady;

  TwoIdFaults(FaultBook book, World world) {
    this.book = book;
    this.world = world;
    steady =
        world.histories().stream()
            .filter(TwoIdFaults::isSteady)
            .map(history -> history.device().id())
            .collect(Collectors.toSet());
  }

  /** One design, in place to the end. */
  private static boolean isSteady(History history) {
    return history.retiredOn() == null
        && history.visits().stream().noneMatch(visit -> visit.design() != null);
  }

  void plant() {
    Sheet orrenby = book.sheet(ORRENBY, Table.INSTALLS, "");
    list(book.sheet(BRACKWEN, Table.INSTALLS, ""), orrenby, "RD-H03", 0, row -> true);
    list(orrenby, book.sheet(TESSARBY, Table.INSTALLS, "Installs 2019"), "W-19", 3, in(2019));
    list(orrenby, book.sheet(TESSARBY, Table.INSTALLS, "Installs 2023"), "W-23", -2, in(2023));
    Row fen =
        list(
            book.sheet(LOWMARROW, Table.INSTALLS, "csv"),
            book.sheet(QUARRINDALE, Table.INSTALLS, ""),
            "QF-01",
            0,
            row -> book.visits(row.text("device_id")) >= 4);
    seenTwice(fen, "QF-01");
  }

  private static Predicate<Row> in(int year) {
    return row -> row.day("installed_on").getYear() == year;
  }

  /** The first partner's row, once the second partner has one of it. */
  private Row list(Sheet from, Sheet into, String secondId, int daysLater, Predicate<Row> fits) {
    Row row = book.pick(from, fits.and(r -> steady.contains(r.text("device_id")) && isAlone(r)));
    Row second = new Row().with("device_id", secondId).with("site_id", row.get("site_id"));
    second.with("installed_on", row.day("installed_on").plusDays(daysLater));
    for (String field : List.of("device_kind", "pipe_wall", "pipe_diameter_in")) {
      second.with(field, row.get(field));
    }
    book.insert(
        into,
        second,
        "device_id",
        "device_id",
        FaultKind.LIKELY_DUPLICATE,
        Outcome.NOTICE,
        from,
        row);
    return row;
  }

  /** No other device of that kind was put in at the site within the weeks that make a pair. */
  private boolean isAlone(Row row) {
    return world.histories().stream()
        .map(History::device)
        .filter(device -> device.site().id().equals(row.text("site_id")))
        .filter(device -> device.kind().equals(row.text("device_kind")))
        .noneMatch(device -> isNear(device, row));
  }

  private static boolean isNear(Device device, Row row) {
    LocalDate day = row.day("installed_on");
    return !device.id().equals(row.text("device_id"))
        && device.installedOn().isAfter(day.minusDays(DAYS_APART + 4))
        && device.installedOn().isBefore(day.plusDays(DAYS_APART + 4));
  }

  /** The second partner came along on two of the visits that found the device at work. */
  private void seenTwice(Row install, String secondId) {
    Sheet visits = book.sheet(QUARRINDALE, Table.REVISITS, "");
    world.records(LOWMARROW, Table.REVISITS).stream()
        .filter(row -> row.text("device_id").equals(install.text("device_id")) && book.quiet(row))
        .limit(2)
        .forEach(row -> visits.rows().add(at(visits, row), second(row, secondId)));
  }

  private static Row second(Row visit, String secondId) {
    return new Row()
        .with("device_id", secondId)
        .with("visited_on", visit.get("visited_on"))
        .with("condition", visit.get("condition"));
  }

  private static int at(Sheet visits, Row visit) {
    int at = visits.rows().size();
    while (at > 0
        && visits.rows().get(at - 1).text("visited_on").compareTo(visit.text("visited_on")) > 0) {
      at--;
    }
    return at;
  }
}
