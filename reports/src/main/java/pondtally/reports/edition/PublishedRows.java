package pondtally.reports.edition;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.view.Line;

/**
 * Which rows of a table by group are published. Years, kinds of property and kinds of evidence are
 * told apart for all devices together only: most years of a single group have few sites, and a year
 * left out could be worked out from the others.
 */
final class PublishedRows {

  private static final String ALL = "all";

  private PublishedRows() {}

  /** Whether a row belongs to what is told at all, small groups not yet considered. */
  static boolean isPublished(Table table, Row row) {
    String grouping = row.text("grouping");
    if (!PublicColumns.GROUPINGS.contains(grouping)) {
      return false;
    }
    boolean isPast =
        table.has("year") && !Set.of("season_forecast", "benefit_years").contains(table.name());
    if (table.name().equals("properties") && !row.text("property_type").equals(ALL)) {
      return grouping.equals(ALL) && row.text("year").equals(ALL);
    }
    return grouping.equals(ALL) || !isPast || row.text("year").equals(ALL);
  }

  /** Rows whose own count of sites or clusters is too small, with those that protect them. */
  static Set<Row> small(Table table, WithheldGroups groups, int below) {
    Set<Row> withheld = new HashSet<>();
    for (Row row : table.rows()) {
      if (isPublished(table, row) && isFew(row, below)) {
        withheld.add(row);
      }
    }
    if (table.name().equals("benefit_cost")) {
      spread(table, withheld);
    }
    if (PublicColumns.ADDITIVE.containsKey(table.name())) {
      protect(table, groups, withheld);
      protectYears(table, withheld);
    }
    return withheld;
  }

  /** To date and ahead repeat each other's counts: a group is told in both, or in none. */
  private static void spread(Table table, Set<Row> withheld) {
    Set<GroupName> few = new HashSet<>();
    withheld.forEach(row -> few.add(name(row)));
    table.rows().stream()
        .filter(row -> isPublished(table, row) && few.contains(name(row)))
        .forEach(withheld::add);
  }

  private static GroupName name(Row row) {
    return new GroupName(row.text("grouping"), row.text("group"));
  }

  private static boolean isFew(Row row, int below) {
    for (String column : List.of("sites", "clusters", "devices", "properties_recorded")) {
      if (row.has(column)) {
        OptionalDouble count = Line.of(row).number(column);
        if (count.isPresent() && count.getAsDouble() < below) {
          return true;
        }
      }
    }
    return false;
  }

  /** A row left out alone among the groups of a grouping takes the smallest other with it. */
  private static void protect(Table table, WithheldGroups groups, Set<Row> withheld) {
    Map<List<String>, Set<Row>> slices =
        new TreeMap<>((a, b) -> a.toString().compareTo(b.toString()));
    for (Row row : table.rows()) {
      if (isPublished(table, row) && !row.text("grouping").equals(ALL)) {
        slices.computeIfAbsent(sliceKey(table, row), k -> new HashSet<>()).add(row);
      }
    }
    for (Set<Row> slice : slices.values()) {
      boolean own = slice.stream().anyMatch(r -> withheld.contains(r) && !isHeld(r, groups));
      if (own) {
        withheld.addAll(slice);
      }
    }
  }

  private static boolean isHeld(Row row, WithheldGroups groups) {
    return groups.holds(row.text("grouping"), row.text("group"));
  }

  private static List<String> sliceKey(Table table, Row row) {
    List<String> columns = PublicColumns.ALSO_KEY.getOrDefault(table.name(), List.of());
    return java.util.stream.Stream.concat(java.util.stream.Stream.of("grouping"), columns.stream())
        .map(row::text)
        .toList();
  }

  /** Years and kinds of property of all devices together. */
  private static void protectYears(Table table, Set<Row> withheld) {
    for (String over : List.of("year", "property_type")) {
      if (table.has(over)) {
        Set<String> small = new TreeSet<>();
        Map<String, Integer> sizes = new TreeMap<>();
        for (Row row : table.rows()) {
          if (isOver(table, row, over)) {
            sizes.merge(row.text(over), size(row), Math::min);
            if (withheld.contains(row)) {
              small.add(row.text(over));
            }
          }
        }
        Set<String> grown = new TreeSet<>(small);
        Complement.grow(
            Slices.of(table, row -> isOver(table, row, over), over), grown, small, sizes);
        table.rows().stream()
            .filter(row -> isOver(table, row, over) && grown.contains(row.text(over)))
            .forEach(withheld::add);
      }
    }
  }

  private static boolean isOver(Table table, Row row, String over) {
    boolean isType = table.name().equals("properties") && over.equals("property_type");
    return isPublished(table, row)
        && row.text("grouping").equals(ALL)
        && !row.text(over).equals(ALL)
        && (!isType || row.text("year").equals(ALL));
  }

  private static int size(Row row) {
    for (String column : List.of("sites", "clusters", "devices", "properties_recorded")) {
      if (row.has(column)) {
        return (int) Line.of(row).number(column).orElse(0);
      }
    }
    return 0;
  }
}
