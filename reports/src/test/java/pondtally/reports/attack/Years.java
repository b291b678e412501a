package pondtally.reports.attack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pondtally.reports.attack.Figures.Key;

/**
 * Years (and the like) of single groups are not published. With the sums over groups and over years
 * a figure x of a group's year is bounded by what the group and the year have in all: at least
 * group + year − everything, at most the lesser of the two (Fréchet's bounds; with nothing but
 * these sums known they are exact).
 */
final class Years {

  private final Map<String, Figures> tables;
  private final Equations equations;
  private final int below;
  private final List<HiddenFigure> found = new ArrayList<>();

  private Years(Map<String, Figures> tables, Equations equations, int below) {
    this.tables = tables;
    this.equations = equations;
    this.below = below;
  }

  /** Every figure that is not nought of a row with fewer sites than {@code below}. */
  static List<HiddenFigure> of(Map<String, Figures> tables, Equations equations, int below) {
    Years years = new Years(tables, equations, below);
    for (Figures figures : tables.values()) {
      for (int at = 0; at < figures.also().size(); at++) {
        years.along(figures, at);
      }
    }
    return years.found;
  }

  private void along(Figures figures, int at) {
    for (Key key : figures.keys()) {
      boolean isPart = !key.grouping().equals("all") && !key.rest().get(at).equals("all");
      Key group = new Key(key.grouping(), key.group(), total(key.rest(), at));
      if (isPart && figures.keys().contains(group) && isFew(figures, key)) {
        for (String column : figures.columns()) {
          boolean isSecret = figures.value(key, column) > 0 && figures.isHidden(key, column);
          if (isSecret && !figures.isEverNegative(column) && addsUp(figures, column, key, at)) {
            bound(figures, column, key, group, at);
          }
        }
      }
    }
  }

  private static List<String> total(List<String> rest, int at) {
    List<String> total = new ArrayList<>(rest);
    total.set(at, "all");
    return total;
  }

  private boolean isFew(Figures figures, Key key) {
    for (String column : List.of("sites", "devices", "properties_recorded")) {
      if (figures.columns().contains(column)) {
        return figures.value(key, column) < below;
      }
    }
    return false;
  }

  private void bound(Figures figures, String column, Key key, Key group, int at) {
    double[] ofGroup = limits(figures, column, group);
    double[] ofYear = limits(figures, column, new Key("all", "all", key.rest()));
    double[] all = limits(figures, column, new Key("all", "all", group.rest()));
    double least = Math.max(0, ofGroup[0] + ofYear[0] - all[1]);
    double most = Math.min(ofGroup[1], ofYear[1]);
    double value = figures.value(key, column);
    found.add(new HiddenFigure(figures.name(key, column), value, least, most));
  }

  /** Whether the group's parts add up to its total, and those of the groups to that of all. */
  private static boolean addsUp(Figures figures, String column, Key key, int at) {
    double along = 0;
    double across = 0;
    for (Key other : figures.keys()) {
      boolean isOfGroup =
          other.grouping().equals(key.grouping())
              && other.group().equals(key.group())
              && !other.rest().get(at).equals("all")
              && total(other.rest(), at).equals(total(key.rest(), at));
      boolean isOfYear = other.grouping().equals(key.grouping()) && other.rest().equals(key.rest());
      along += isOfGroup ? figures.value(other, column) : 0;
      across += isOfYear ? figures.value(other, column) : 0;
    }
    Key group = new Key(key.grouping(), key.group(), total(key.rest(), at));
    return Attack.isSame(along, figures.value(group, column))
        && Attack.isSame(across, figures.value(new Key("all", "all", key.rest()), column));
  }

  private double[] limits(Figures figures, String column, Key key) {
    if (!figures.isHidden(key, column)) {
      double value = figures.value(key, column);
      return new double[] {value, value};
    }
    return equations.limits(figures.name(key, column));
  }
}
