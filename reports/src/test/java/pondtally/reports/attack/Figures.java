package pondtally.reports.attack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.view.Line;

/** The figures of one table by group: what they are, and which of them the public edition shows. */
final class Figures {

  /**
   * Where a figure stands.
   *
   * @param rest keys besides grouping and group, in the order of the table
   */
  record Key(String grouping, String group, List<String> rest) {
    Key of(String otherGrouping, String otherGroup) {
      return new Key(otherGrouping, otherGroup, rest);
    }
  }

  static final Set<String> GROUPINGS =
      Set.of("all", "pipe", "kind", "watershed", "cohort", "build", "setting");

  private final Table full;
  private final Predicate<String> revealed;
  private final List<String> also;
  private final Map<Key, Row> rows = new LinkedHashMap<>();
  private final Map<Key, Row> shown = new HashMap<>();
  private final Set<String> shownKinds = new TreeSet<>();
  private final Map<String, Set<String>> hiddenGroups;

  /**
   * @param hiddenGroups takes the groups that are withheld, by grouping: a reader knows of them
   *     from any table, and not in which others they have rows
   */
  Figures(
      Table full, Table open, Predicate<String> revealed, Map<String, Set<String>> hiddenGroups) {
    this.hiddenGroups = hiddenGroups;
    this.full = full;
    this.revealed = revealed;
    // How far a group looks back follows from its own first install and singles nothing out.
    this.also =
        full.key().stream()
            .filter(key -> !key.startsWith("group") && !key.equals("horizon_years"))
            .toList();
    for (Row row : full.rows()) {
      if (GROUPINGS.contains(row.text("grouping"))) {
        rows.put(key(row), row);
      }
    }
    open.rows().forEach(row -> shown.put(key(row), row));
    shown.keySet().forEach(key -> shownKinds.add(kind(key)));
    Set<List<String>> told = new TreeSet<>((a, b) -> a.toString().compareTo(b.toString()));
    shown.forEach((key, row) -> told.add(List.of(key.grouping(), key.group())));
    for (Key key : rows.keySet()) {
      boolean isHidden =
          !told.contains(List.of(key.grouping(), key.group())) || isLineOfNothing(key);
      if (isHidden) {
        hiddenGroups.computeIfAbsent(key.grouping(), g -> new TreeSet<>()).add(key.group());
      }
    }
  }

  private boolean isLineOfNothing(Key key) {
    Row row = shown.get(key);
    return row != null && columns().stream().allMatch(c -> row.text(c).equals(Row.WITHHELD));
  }

  private Key key(Row row) {
    return new Key(row.text("grouping"), row.text("group"), also.stream().map(row::text).toList());
  }

  String table() {
    return full.name();
  }

  List<String> also() {
    return also;
  }

  Set<Key> keys() {
    return rows.keySet();
  }

  /** Columns of numbers that may be published. */
  List<String> columns() {
    return full.fields().stream()
        .filter(f -> !f.isPrivate() && Set.of("number", "integer").contains(f.type()))
        .map(Field::name)
        .filter(name -> !full.key().contains(name) && !name.equals("base_year"))
        .toList();
  }

  boolean isWhole(String column) {
    return full.fields().stream()
        .anyMatch(field -> field.name().equals(column) && field.type().equals("integer"));
  }

  /** The figure; an empty cell, and a row that is not there, counts as 0. */
  double value(Key key, String column) {
    Row row = rows.get(key);
    return row == null ? 0 : Line.of(row).number(column).orElse(0);
  }

  boolean isThere(Key key, String column) {
    Row row = rows.get(key);
    return row != null && Line.of(row).number(column).isPresent();
  }

  /** Whether a reader of the public edition does not see the figure. */
  boolean isHidden(Key key, String column) {
    if (revealed.test(name(key, column))) {
      return false;
    }
    Row row = shown.get(key);
    return row == null ? mayBeThere(key) : row.text(column).equals(Row.WITHHELD);
  }

  /**
   * Whether a row is withheld as a whole. In rows that are shown, counts of what was left out are
   * not told; they may follow from the rest of the row.
   */
  boolean isSecret(Key key) {
    return !shown.containsKey(key) || isLineOfNothing(key);
  }

  /** Where nothing is shown of a kind of rows, a reader does not know which there are. */
  private boolean mayBeThere(Key key) {
    return rows.containsKey(key)
        || hiddenGroups.getOrDefault(key.grouping(), Set.of()).contains(key.group())
        || !shownKinds.contains(kind(key));
  }

  private static String kind(Key key) {
    return key.grouping().equals("all")
        + " "
        + key.rest().stream().map(value -> value.equals("all")).toList();
  }

  String name(Key key, String column) {
    return String.join(
        "|", full.name(), key.grouping(), key.group(), String.join(" ", key.rest()), column);
  }

  /** Groups of a grouping, with and without a row for the other keys. */
  List<String> groups(String grouping) {
    Set<String> groups = new TreeSet<>(hiddenGroups.getOrDefault(grouping, Set.of()));
    rows.keySet().stream()
        .filter(key -> key.grouping().equals(grouping))
        .map(Key::group)
        .forEach(groups::add);
    return List.copyOf(groups);
  }

  /** All values of the other keys, in order. */
  List<List<String>> rests() {
    return new ArrayList<>(rows.keySet().stream().map(Key::rest).distinct().toList());
  }

  boolean isEverNegative(String column) {
    return rows.keySet().stream().anyMatch(key -> value(key, column) < 0);
  }
}
