package pondtally.reports.attack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.reports.attack.Figures.Key;

/**
 * Columns that are always the same multiple of one another, such as the devices of two tables, or
 * hectares and acres: whoever sees one knows the other.
 */
final class Repetitions {

  private static final int FEWEST_ROWS = 6;
  private static final int FEWEST_VALUES = 3;

  /** One column of one table for fixed other keys: a figure for each group. */
  private record Column(Figures figures, List<String> rest, String name) {
    Key key(Key group) {
      return new Key(group.grouping(), group.group(), rest);
    }

    double value(Key group) {
      return figures.value(key(group), name);
    }
  }

  private final Map<String, Figures> tables;
  private final Equations equations;
  private final Set<Key> groups = new java.util.LinkedHashSet<>();

  Repetitions(Map<String, Figures> tables, Equations equations) {
    this.tables = tables;
    this.equations = equations;
    tables
        .values()
        .forEach(
            figures ->
                figures
                    .keys()
                    .forEach(key -> groups.add(new Key(key.grouping(), key.group(), List.of()))));
  }

  void learn() {
    List<Column> columns = columns();
    Map<Column, List<Key>> there = new HashMap<>();
    columns.forEach(
        column ->
            there.put(
                column,
                groups.stream()
                    .filter(group -> column.figures().isThere(column.key(group), column.name()))
                    .toList()));
    for (int i = 0; i < columns.size(); i++) {
      for (int j = i + 1; j < columns.size(); j++) {
        Column a = columns.get(i);
        Column b = columns.get(j);
        List<Key> common = new ArrayList<>(there.get(a));
        common.retainAll(Set.copyOf(there.get(b)));
        multiple(a, b, common).ifPresent(factor -> learn(a, b, common, factor));
      }
    }
  }

  private List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    for (Figures figures : tables.values()) {
      boolean isLong =
          figures.also().stream().anyMatch(Attack.MOMENTS::contains) || figures.rests().size() > 60;
      for (List<String> rest : figures.rests()) {
        int year = figures.also().indexOf("year");
        boolean isOfAYear = year >= 0 && !rest.get(year).equals("all");
        if (!isLong && !isOfAYear || isLong && isAll(figures, rest)) {
          figures.columns().forEach(column -> columns.add(new Column(figures, rest, column)));
        }
      }
    }
    return columns;
  }

  private static boolean isAll(Figures figures, List<String> rest) {
    int year = figures.also().indexOf("year");
    return year >= 0
        && rest.get(year).equals("all")
        && figures.also().stream().noneMatch(Attack.MOMENTS::contains);
  }

  /** The factor between two columns; empty where it is not the same in all rows. */
  private static OptionalDouble multiple(Column a, Column b, List<Key> common) {
    Set<Double> values = new TreeSet<>();
    double factor = Double.NaN;
    int rows = 0;
    for (Key group : common) {
      double one = a.value(group);
      double other = b.value(group);
      if ((one == 0) != (other == 0)) {
        return OptionalDouble.empty();
      }
      if (one != 0) {
        factor = Double.isNaN(factor) ? one / other : factor;
        if (!Attack.isSame(one / other, factor)) {
          return OptionalDouble.empty();
        }
        values.add(one);
        rows++;
      }
    }
    boolean isTelling = rows >= FEWEST_ROWS && values.size() >= FEWEST_VALUES;
    return isTelling ? OptionalDouble.of(factor) : OptionalDouble.empty();
  }

  private void learn(Column a, Column b, List<Key> common, double factor) {
    for (Key group : common) {
      Map<String, Double> unknown = new TreeMap<>();
      double rest = 0;
      for (Map.Entry<Column, Double> term : Map.of(a, 1.0, b, -factor).entrySet()) {
        Column column = term.getKey();
        Key key = column.key(group);
        if (!column.figures().isHidden(key, column.name())) {
          rest -= term.getValue() * column.value(group);
        } else {
          String name = column.figures().name(key, column.name());
          unknown.put(name, term.getValue());
          if (column.figures().isEverNegative(column.name())) {
            equations.mayBeNegative(name);
          }
        }
      }
      if (!unknown.isEmpty()) {
        equations.add(unknown, rest);
      }
    }
  }
}
