package pondtally.reports.attack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import pondtally.reports.attack.Figures.Key;
import pondtally.reports.table.TablePackage;

/**
 * Somebody who holds the public edition, knows which figures add up to which and which tables
 * repeat each other's figures, and works out limits of every figure that is withheld. Whether
 * figures add up is looked up in the full tables, so that the reader is credited with more than can
 * be known.
 */
public final class Attack {

  /** Keys along which many rows stand for moments in time: only rows with a figure are secrets. */
  static final Set<String> MOMENTS = Set.of("time_days", "days");

  private static final double SAME = 1e-9;

  private final Map<String, Figures> tables = new LinkedHashMap<>();
  private final Equations equations = new Equations();
  private final int below;
  private final Map<String, HiddenFigure> secrets = new TreeMap<>();

  private Attack(TablePackage full, TablePackage open, Predicate<String> revealed) {
    below = Integer.parseInt(full.fact("groups_below"));
    Map<String, Set<String>> hiddenGroups = new TreeMap<>();
    full.tables().stream()
        .filter(table -> table.key().contains("grouping") && table.key().contains("group"))
        .filter(table -> open.table(table.name()).isPresent())
        .forEach(
            table ->
                tables.put(
                    table.name(),
                    new Figures(
                        table, open.table(table.name()).orElseThrow(), revealed, hiddenGroups)));
  }

  /** Every withheld figure of every table by group, with its limits. */
  public static List<HiddenFigure> on(TablePackage full, TablePackage open) {
    return on(full, open, name -> false);
  }

  /**
   * The same against an edition that shows some figures more.
   *
   * @param revealed by the figure's name
   */
  public static List<HiddenFigure> on(
      TablePackage full, TablePackage open, Predicate<String> revealed) {
    Attack attack = new Attack(full, open, revealed);
    attack.learn();
    return attack.limits();
  }

  private void learn() {
    for (Figures figures : tables.values()) {
      for (String column : figures.columns()) {
        for (String grouping : Figures.GROUPINGS) {
          if (!grouping.equals("all")) {
            groups(figures, column, grouping);
          }
        }
        along(figures, column);
      }
    }
    new Identities(tables, equations).learn();
    new Repetitions(tables, equations).learn();
  }

  /** What is the same along each group of a grouping: the figures add up to those of all. */
  private void groups(Figures figures, String column, String grouping) {
    List<String> groups = figures.groups(grouping);
    Map<List<String>, List<List<String>>> kinds = new LinkedHashMap<>();
    for (List<String> rest : figures.rests()) {
      kinds.computeIfAbsent(untimed(figures, rest), k -> new ArrayList<>()).add(rest);
    }
    for (List<List<String>> rests : kinds.values()) {
      if (addsUp(figures, column, grouping, groups, rests)) {
        rests.stream()
            .filter(rest -> isWhole(figures, rest))
            .forEach(
                rest -> {
                  List<Key> parts =
                      groups.stream().map(group -> new Key(grouping, group, rest)).toList();
                  sum(figures, column, parts, new Key("all", "all", rest));
                });
      }
    }
  }

  private static boolean addsUp(
      Figures figures,
      String column,
      String grouping,
      List<String> groups,
      List<List<String>> rests) {
    boolean isTelling = false;
    for (List<String> rest : rests) {
      Key all = new Key("all", "all", rest);
      double sum = 0;
      int several = 0;
      for (String group : groups) {
        double value = figures.value(new Key(grouping, group, rest), column);
        sum += value;
        several += value == 0 ? 0 : 1;
      }
      if (figures.isThere(all, column)) {
        if (!isSame(sum, figures.value(all, column))) {
          return false;
        }
        isTelling |= several > 1;
      }
    }
    return isTelling;
  }

  /** The other keys without years and moments. */
  private static List<String> untimed(Figures figures, List<String> rest) {
    List<String> kept = new ArrayList<>(rest);
    for (int i = 0; i < kept.size(); i++) {
      String key = figures.also().get(i);
      if (key.equals("year") || MOMENTS.contains(key)) {
        kept.set(i, "");
      }
    }
    return kept;
  }

  /**
   * Whether a row is about all years. Years of single groups are not published at all; with nothing
   * but sums on both sides they can be anything that these allow.
   */
  private static boolean isWhole(Figures figures, List<String> rest) {
    int year = figures.also().indexOf("year");
    return year < 0 || rest.get(year).equals("all") || hasNoTotal(figures, year);
  }

  private static boolean hasNoTotal(Figures figures, int at) {
    return figures.rests().stream().noneMatch(rest -> rest.get(at).equals("all"));
  }

  /** Years, kinds of property and the like of all devices together add up to their total. */
  private void along(Figures figures, String column) {
    for (int at = 0; at < figures.also().size(); at++) {
      int along = at;
      for (List<String> total : figures.rests()) {
        if (total.get(at).equals("all")) {
          List<Key> parts =
              figures.rests().stream()
                  .map(rest -> rest.get(along))
                  .filter(value -> !value.equals("all"))
                  .distinct()
                  .map(value -> new Key("all", "all", with(total, along, value)))
                  .toList();
          double sum = parts.stream().mapToDouble(key -> figures.value(key, column)).sum();
          Key all = new Key("all", "all", total);
          long several = parts.stream().filter(key -> figures.value(key, column) != 0).count();
          if (several > 1 && isSame(sum, figures.value(all, column))) {
            sum(figures, column, parts, all);
          }
        }
      }
    }
  }

  private static List<String> with(List<String> rest, int at, String value) {
    List<String> changed = new ArrayList<>(rest);
    changed.set(at, value);
    return changed;
  }

  /** The parts add up to the total. */
  private void sum(Figures figures, String column, List<Key> parts, Key total) {
    Map<String, Double> factors = new TreeMap<>();
    double rest = 0;
    for (Key part : parts) {
      rest -= term(figures, column, part, 1, factors);
    }
    rest -= term(figures, column, total, -1, factors);
    if (!factors.isEmpty()) {
      equations.add(factors, Math.abs(rest) < SAME ? 0 : rest);
    }
  }

  /** A figure that is shown counts with its value; one that is hidden becomes an unknown. */
  private double term(
      Figures figures, String column, Key key, double factor, Map<String, Double> factors) {
    if (!figures.isHidden(key, column)) {
      return factor * figures.value(key, column);
    }
    String name = figures.name(key, column);
    factors.put(name, factor);
    if (figures.isEverNegative(column)) {
      equations.mayBeNegative(name);
    }
    return 0;
  }

  private List<HiddenFigure> limits() {
    for (Figures figures : tables.values()) {
      boolean hasMoments = figures.also().stream().anyMatch(MOMENTS::contains);
      for (String column : figures.columns()) {
        for (Key key : figures.keys()) {
          boolean isSecret =
              figures.isThere(key, column)
                  && figures.isSecret(key)
                  && figures.isHidden(key, column)
                  && equations.knows(figures.name(key, column))
                  && !isKnownNought(figures, key, column, hasMoments);
          if (isSecret) {
            secrets.put(figures.name(key, column), limits(figures, key, column));
          }
        }
      }
    }
    List<HiddenFigure> found = new ArrayList<>(secrets.values());
    found.addAll(Ratios.of(tables, equations));
    found.addAll(Years.of(tables, equations, below));
    return found;
  }

  /** What nobody has, nobody has: where the total of all is nought, there is nothing to hide. */
  private static boolean isKnownNought(
      Figures figures, Key key, String column, boolean hasMoments) {
    Key all = new Key("all", "all", key.rest());
    return figures.value(key, column) == 0
        && (hasMoments || Math.abs(figures.value(all, column)) < SAME);
  }

  private HiddenFigure limits(Figures figures, Key key, String column) {
    String name = figures.name(key, column);
    double[] limits = equations.limits(name);
    if (figures.isWhole(column)) {
      limits[0] = Math.ceil(limits[0] - 1e-6);
      limits[1] = Math.floor(limits[1] + 1e-6);
    }
    return new HiddenFigure(name, figures.value(key, column), limits[0], limits[1]);
  }

  static boolean isSame(double a, double b) {
    return Math.abs(a - b) <= SAME * Math.max(1, Math.max(Math.abs(a), Math.abs(b)));
  }
}
