package pondtally.reports.compare;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;

/**
 * How many devices of each group are new, gone or changed. A group none of whose devices or sites
 * differ owes nothing to new or corrected rows, unless its figure is set against other groups.
 */
final class GroupRecords {

  /** Figures of a group that are made with those of all the others. */
  private static final List<String> POOLED =
      List.of("expected", "shrunken", "funnel", "outside_funnel", "withheld_reason", "p_adjusted");

  /** Only its site differs, or only what another setting can move as well. */
  private static final String BLURRED = "blurred";

  private final Map<List<String>, int[]> counts = new HashMap<>();
  private final Set<String> known = new HashSet<>(List.of("all", "site"));
  private final String beforeDigits;
  private final String afterDigits;

  /**
   * @param byRecords whether a difference between two devices cannot come from a setting
   */
  GroupRecords(
      TablePackage before,
      TablePackage after,
      List<RecordChange> records,
      Predicate<RecordChange> byRecords) {
    beforeDigits = before.fact("watershed_digits");
    afterDigits = after.fact("watershed_digits");
    Map<String, String> devices = new HashMap<>();
    Set<String> sites = new HashSet<>();
    for (RecordChange record : records) {
      if (record.subject().equals("device")) {
        boolean isOwn = !record.kind().equals(FigureChange.CHANGED) || byRecords.test(record);
        devices.put(record.id(), isOwn ? record.kind() : BLURRED);
      } else if (!record.kind().equals(FigureChange.NEW)) {
        sites.add(record.id());
      }
    }
    count(before, devices, sites, beforeDigits, List.of(FigureChange.GONE));
    count(
        after,
        devices,
        sites,
        afterDigits,
        List.of(FigureChange.NEW, FigureChange.CHANGED, BLURRED));
  }

  /** Counts each device once: gone ones in the earlier run, others in the later. */
  private void count(
      TablePackage tables,
      Map<String, String> devices,
      Set<String> sites,
      String digits,
      List<String> kinds) {
    tables
        .table("devices")
        .filter(t -> List.of("device_id", "site_id", "watershed", "pipe").stream().allMatch(t::has))
        .ifPresent(
            table -> {
              known.addAll(List.of("pipe", "kind", "watershed", "pipe-in-watershed", "cohort"));
              for (Row row : table.rows()) {
                String otherwise = sites.contains(row.text("site_id")) ? BLURRED : "";
                String kind = devices.getOrDefault(row.text("device_id"), otherwise);
                int at = List.of("new", "gone", "changed", BLURRED).indexOf(kind);
                if (kinds.contains(kind)) {
                  groups(row, digits)
                      .forEach(group -> counts.computeIfAbsent(group, g -> new int[4])[at]++);
                }
              }
            });
  }

  private static List<List<String>> groups(Row row, String digits) {
    String watershed = cut(row.text("watershed"), digits);
    String installed = row.text("installed_on");
    return List.of(
        List.of("all", "all"),
        List.of("site", row.text("site_id")),
        List.of("pipe", row.text("pipe")),
        List.of("kind", row.text("kind")),
        List.of("watershed", watershed),
        List.of("pipe-in-watershed", watershed + " / " + row.text("pipe")),
        List.of("cohort", installed.length() < 4 ? "" : installed.substring(0, 4)));
  }

  private static String cut(String watershed, String digits) {
    int length = digits.isEmpty() ? watershed.length() : Integer.parseInt(digits);
    return watershed.substring(0, Math.min(length, watershed.length()));
  }

  boolean isPooled(String column) {
    return POOLED.stream().anyMatch(column::startsWith);
  }

  /** Whether it is known that no device of the group differs, nor any of its sites. */
  boolean isUntouched(String grouping, String group) {
    return known.contains(grouping)
        && beforeDigits.equals(afterDigits)
        && Arrays.stream(counts.getOrDefault(List.of(grouping, group), new int[4])).sum() == 0;
  }

  /** For example {@code 4 devices new, 31 with other records}; empty where not known. */
  Optional<String> words(String grouping, String group) {
    int[] count = counts.get(List.of(grouping, group));
    if (count == null || count[0] + count[1] + count[2] == 0) {
      return Optional.empty();
    }
    return Optional.of(
        Messages.reports()
            .text(
                "compare.why.devices",
                Map.of("new", count[0], "gone", count[1], "changed", count[2])));
  }
}
