package pondtally.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import pondtally.record.Removal;

/**
 * A site's count for a year is taken from one partner: the first in file order. Counts of one
 * partner for one site and year are taken as parts of the whole.
 */
final class RemovalsCountedTwice {

  private RemovalsCountedTwice() {}

  static void apply(OpenCluster cluster) {
    for (List<Removal> ofSite : cluster.removals.by(Removal::siteId).values()) {
      List<Removal> kept = new ArrayList<>();
      for (Removal row : ofSite) {
        if (!judged(cluster, kept, row)) {
          kept.add(row);
        }
      }
    }
  }

  /** Whether the row was taken out. */
  private static boolean judged(OpenCluster cluster, List<Removal> kept, Removal row) {
    List<Removal> overlapping = kept.stream().filter(k -> overlaps(k, row)).toList();
    List<Removal> ofOthers =
        overlapping.stream().filter(k -> !k.partner().equals(row.partner())).toList();
    if (ofOthers.isEmpty()) {
      overlapping.stream().findFirst().ifPresent(k -> noticeParts(cluster, k, row));
      return false;
    }
    Optional<Removal> same = ofOthers.stream().filter(k -> agrees(k, row)).findFirst();
    same.ifPresentOrElse(
        k -> cluster.removals.duplicate(row, remark(row, sameMessage(k, row))),
        () -> cluster.removals.setAside(row, remark(row, otherMessage(ofOthers.get(0), row))));
    return true;
  }

  /** Whether both give the same quantity for the same year. */
  private static boolean overlaps(Removal a, Removal b) {
    boolean removals = a.removals() != null && b.removals() != null;
    boolean avoided = a.avoided() != null && b.avoided() != null;
    return a.year() == b.year() && (removals || avoided);
  }

  private static boolean agrees(Removal a, Removal b) {
    return Objects.equals(a.removals(), b.removals()) && Objects.equals(a.avoided(), b.avoided());
  }

  private static void noticeParts(OpenCluster cluster, Removal first, Removal row) {
    String message =
        """
            Site %s has another row for %s from the same partner (%s). Both are \
            counted, as two parts of the year. If one is a correction of the other, \
            delete the wrong one."""
            .formatted(
                Words.quote(row.siteId()), String.valueOf(row.year()), Words.row(first.origin()));
    cluster.removals.notice(
        row,
        Remark.cell(CheckRule.SEVERAL_REMOVAL_ROWS, "year", String.valueOf(row.year()), message));
  }

  private static Remark remark(Removal row, String message) {
    return Remark.cell(
        CheckRule.REMOVALS_COUNTED_TWICE, "year", String.valueOf(row.year()), message);
  }

  private static String sameMessage(Removal first, Removal row) {
    return """
        Another partner gives the same numbers for site %s in %s (%s). They are \
        counted once, there. Agree which partner reports this site."""
        .formatted(
            Words.quote(row.siteId()), String.valueOf(row.year()), Words.row(first.origin()));
  }

  private static String otherMessage(Removal first, Removal row) {
    return """
        Another partner gives other numbers for site %s in %s: %s there (%s), %s \
        here. That row comes first and is used; this one was set aside. Agree \
        which is right, and which partner reports this site."""
        .formatted(
            Words.quote(row.siteId()),
            String.valueOf(row.year()),
            counts(first),
            Words.row(first.origin()),
            counts(row));
  }

  private static String counts(Removal row) {
    List<String> parts = new ArrayList<>();
    if (row.removals() != null) {
      parts.add(Words.number(row.removals()) + " removed");
    }
    if (row.avoided() != null) {
      parts.add(Words.number(row.avoided()) + " avoided");
    }
    return Words.list(parts);
  }
}
