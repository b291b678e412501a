package pondtally.reports.edition;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Rows;

/**
 * The groups that are withheld in every table: those with too few sites, those whose cost is nearly
 * all one site's, those that hold nearly the same devices under another name, and those without
 * which a subtraction would give one away.
 */
final class WithheldGroups {

  private static final int TWIN = 1_000_000_000;

  private final Set<GroupName> small = new TreeSet<>();
  private final Set<GroupName> withheld = new TreeSet<>();
  private final SortedMap<GroupName, Integer> sizes = new TreeMap<>();

  private WithheldGroups() {}

  static WithheldGroups of(TablePackage tables, GroupMembers members, int below) {
    WithheldGroups found = new WithheldGroups();
    found.measure(tables, members);
    for (Map.Entry<GroupName, Integer> size : found.sizes.entrySet()) {
      if (size.getValue() < below || isDominated(members, size.getKey())) {
        found.small.add(size.getKey());
      }
    }
    found.withheld.addAll(found.small);
    Map<String, List<Slice>> slices = slices(tables);
    int before;
    do {
      before = found.withheld.size();
      found.addTwins(members, below);
      slices.forEach((grouping, own) -> found.grow(grouping, own, members, below));
    } while (found.withheld.size() > before);
    return found;
  }

  /** A group of one site's cost in the main; the whole program is told whatever it consists of. */
  private static boolean isDominated(GroupMembers members, GroupName name) {
    return !name.grouping().equals("all") && members.isDominated(name, Complement.MARGIN);
  }

  /** Sites of each group: the smaller of what the tables and what the devices themselves say. */
  private void measure(TablePackage tables, GroupMembers members) {
    Rows.of(tables, "costs").where("year", "all").list().stream()
        .filter(row -> PublicColumns.GROUPINGS.contains(row.text("grouping")))
        .forEach(row -> put(name(row), (int) row.number("sites").orElse(0)));
    members.names().forEach(name -> put(name, members.sites(name)));
    for (Table table : tables.tables()) {
      if (PublicColumns.GROUPED.contains(table.name())) {
        table.rows().stream()
            .filter(row -> PublicColumns.GROUPINGS.contains(row.text("grouping")))
            .forEach(row -> sizes.putIfAbsent(name(row), 0));
      }
    }
  }

  private void put(GroupName name, int sites) {
    sizes.merge(name, sites, Math::min);
  }

  private static GroupName name(Row row) {
    return new GroupName(row.text("grouping"), row.text("group"));
  }

  private static Map<String, List<Slice>> slices(TablePackage tables) {
    List<Slice> all = new ArrayList<>();
    for (Table table : tables.tables()) {
      if (PublicColumns.ADDITIVE.containsKey(table.name())) {
        all.addAll(Slices.of(table, row -> PublishedRows.isPublished(table, row), "group"));
      }
    }
    return all.stream()
        .collect(Collectors.groupingBy(Slice::grouping, TreeMap::new, Collectors.toList()));
  }

  private void addTwins(GroupMembers members, int below) {
    for (GroupName hidden : new ArrayList<>(withheld)) {
      for (GroupName other : sizes.keySet()) {
        if (isTwin(members, hidden, other, below)) {
          withheld.add(other);
        }
      }
    }
  }

  private static boolean isTwin(GroupMembers members, GroupName a, GroupName b, int below) {
    return !a.grouping().equals(b.grouping())
        && !b.grouping().equals("all")
        && members.sites(a) > 0
        && members.sites(b) > 0
        && members.sitesApart(a, b) < below;
  }

  /** A group that has a twin is the last choice: its twin would have to go as well. */
  private void grow(String grouping, List<Slice> slices, GroupMembers members, int below) {
    Set<String> names = of(withheld, grouping);
    Map<String, Integer> open = new TreeMap<>();
    sizes.forEach(
        (name, size) -> {
          if (name.grouping().equals(grouping)) {
            boolean hasTwin =
                sizes.keySet().stream().anyMatch(other -> isTwin(members, name, other, below));
            open.put(name.group(), hasTwin ? size + TWIN : size);
          }
        });
    Complement.grow(slices, names, of(small, grouping), open);
    names.forEach(group -> withheld.add(new GroupName(grouping, group)));
  }

  private static Set<String> of(Set<GroupName> names, String grouping) {
    return names.stream()
        .filter(name -> name.grouping().equals(grouping))
        .map(GroupName::group)
        .collect(Collectors.toCollection(HashSet::new));
  }

  boolean holds(String grouping, String group) {
    return withheld.contains(new GroupName(grouping, group));
  }

  /** Whether some grouping has a withheld group of that name. */
  boolean holdsAny(String group) {
    return withheld.stream().anyMatch(name -> name.group().equals(group));
  }

  /** All of them, in order. */
  Set<GroupName> all() {
    return Set.copyOf(withheld);
  }

  /** Number of sites of all devices. */
  int sites() {
    return sizes.getOrDefault(new GroupName("all", "all"), 0);
  }
}
