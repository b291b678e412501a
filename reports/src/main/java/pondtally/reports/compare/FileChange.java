package pondtally.reports.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;

/**
 * An input file that differs between two runs.
 *
 * @param kind {@code changed}, {@code new} or {@code gone}
 * @param sha256Before null where the earlier run did not have it
 */
public record FileChange(String file, String kind, String sha256Before, String sha256After) {

  static List<FileChange> of(SortedMap<String, String> before, SortedMap<String, String> after) {
    TreeSet<String> names = new TreeSet<>(before.keySet());
    names.addAll(after.keySet());
    List<FileChange> changes = new ArrayList<>();
    for (String name : names) {
      String old = before.get(name);
      String now = after.get(name);
      if (old == null || !old.equals(now)) {
        String kind =
            old == null ? FigureChange.NEW : now == null ? FigureChange.GONE : FigureChange.CHANGED;
        changes.add(new FileChange(name, kind, old, now));
      }
    }
    return changes;
  }
}
