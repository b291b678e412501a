package pondtally.reports.edition;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.reports.table.Row;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;
import pondtally.reports.view.Rows;

/** Which devices, at which sites, each group holds; from the full tables. */
final class GroupMembers {

  /** A device with its site. */
  record Member(String device, String site) {}

  private static final String UNKNOWN = "unknown";

  private final SortedMap<GroupName, Set<Member>> members = new TreeMap<>();
  private final Map<String, Double> costUsd = new HashMap<>();

  private GroupMembers() {}

  static GroupMembers of(TablePackage tables) {
    GroupMembers found = new GroupMembers();
    Map<String, String> settings = new HashMap<>();
    Rows.of(tables, "sites").list().forEach(s -> settings.put(key(s), s.text("setting")));
    for (Row device : Rows.of(tables, "devices").list()) {
      Member member =
          new Member(device.text("partner") + '\0' + device.text("device_id"), key(device));
      found.costUsd.put(member.device(), Line.of(device).number("cost_recorded_usd").orElse(0));
      found.add("all", "all", member);
      found.add("pipe", device.text("pipe"), member);
      found.add("kind", orUnknown(device.text("kind")), member);
      found.add("setting", orUnknown(settings.getOrDefault(key(device), "")), member);
      found.add("watershed", watershed(tables, device.text("watershed")), member);
    }
    return found;
  }

  /** The watershed group of a code, as the analyses make it. */
  static String watershed(TablePackage tables, String code) {
    if (code.isEmpty()) {
      return UNKNOWN;
    }
    int digits = Integer.parseInt(tables.fact("watershed_digits"));
    if (!code.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return code;
    }
    return code.length() < digits ? "coarser" : code.substring(0, digits);
  }

  static String orUnknown(String value) {
    return value.isEmpty() ? UNKNOWN : value;
  }

  private static String key(Row row) {
    return row.text("site_id");
  }

  private void add(String grouping, String group, Member member) {
    members.computeIfAbsent(new GroupName(grouping, group), g -> new HashSet<>()).add(member);
  }

  /** Groups with members. */
  Set<GroupName> names() {
    return Collections.unmodifiableSet(members.keySet());
  }

  /** Sites of a group; none where the group is not known by its members. */
  int sites(GroupName group) {
    return sites(List.copyOf(members.getOrDefault(group, Set.of())));
  }

  /**
   * Whether the group's cost, were it told, would tell that of its costliest site within a {@code
   * margin} (the p% rule, Willenborg and de Waal 2001).
   */
  boolean isDominated(GroupName group, double margin) {
    Map<String, Double> bySite = new TreeMap<>();
    members
        .getOrDefault(group, Set.of())
        .forEach(member -> bySite.merge(member.site(), costUsd.get(member.device()), Double::sum));
    double total = bySite.values().stream().mapToDouble(usd -> usd).sum();
    double most = bySite.values().stream().mapToDouble(usd -> usd).max().orElse(0);
    return most > 0 && total < (1 + margin) * most;
  }

  /** Sites of the devices that one of two groups holds and the other does not. */
  int sitesApart(GroupName a, GroupName b) {
    Set<Member> one = new HashSet<>(members.getOrDefault(a, Set.of()));
    Set<Member> two = new HashSet<>(members.getOrDefault(b, Set.of()));
    Set<Member> both = new HashSet<>(one);
    both.retainAll(two);
    one.addAll(two);
    one.removeAll(both);
    return sites(List.copyOf(one));
  }

  private static int sites(List<Member> devices) {
    return (int) devices.stream().map(Member::site).distinct().count();
  }
}
