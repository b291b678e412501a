package pondtally.reports.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Line;

/**
 * What somebody who holds the public edition can work out about each withheld figure: the least and
 * the most it can be, by narrowing limits over the sums that the published tables state until
 * nothing moves. Each withheld figure stands in one sum over groups, where such limits are exact,
 * and in at most one sum of cost columns.
 */
final class PublicAttack {

  /** A withheld figure with what it is and what it is known to lie between. */
  record Cell(String name, double value, double least, double most) {

    /** Whether both limits lie within a fifth of the figure. */
    boolean isDetermined() {
      double width = Math.max(1e-9, 0.2 * value);
      return least > value - width && most < value + width;
    }
  }

  /** An equation: figures, each with a factor, add up to a known value. */
  private record Equation(Map<String, Double> factors, double sum) {}

  private static final Map<String, List<String>> FIGURES =
      Map.of(
          "costs",
          List.of(
              "devices",
              "devices_costed",
              "build_usd",
              "upkeep_usd",
              "in_kind_usd",
              "estimated_usd",
              "total_usd",
              "volunteer_hours",
              "devices_estimated"),
          "failure_rates",
          List.of("devices", "failures", "device_years"),
          "survival_summary",
          List.of("devices", "lives", "failures", "device_years"));

  private final Map<String, Double> truth = new TreeMap<>();
  private final Map<String, List<Equation>> equations = new TreeMap<>();

  private PublicAttack() {}

  /** Every withheld figure of the lifetime rows of additive tables. */
  static List<Cell> on(TablePackage full, TablePackage open) {
    PublicAttack attack = new PublicAttack();
    FIGURES.forEach((table, columns) -> attack.read(full, open, table, columns));
    List<Cell> cells = new ArrayList<>();
    attack.truth.forEach((name, value) -> cells.add(attack.bounds(name, value)));
    return cells;
  }

  private void read(TablePackage full, TablePackage open, String name, List<String> columns) {
    Table all = full.table(name).orElseThrow();
    Map<String, Row> published = new TreeMap<>();
    open.table(name).orElseThrow().rows().forEach(row -> published.put(key(row), row));
    for (String grouping : List.of("pipe", "kind", "watershed", "cohort", "build", "setting")) {
      List<Row> rows =
          all.rows().stream()
              .filter(row -> row.text("grouping").equals(grouping) && isLifetime(row))
              .toList();
      for (String column : columns) {
        equation(published, rows, name + "|" + grouping, column);
      }
      if (name.equals("costs")) {
        rows.stream()
            .filter(row -> isHidden(published, row, "total_usd"))
            .forEach(row -> identity(name + "|" + grouping, row));
      }
    }
  }

  private void equation(Map<String, Row> published, List<Row> rows, String part, String column) {
    Map<String, Double> factors = new TreeMap<>();
    double rest =
        rows.isEmpty() ? 0 : number(published.get(totalKey(rows.get(0))), column).orElse(0);
    for (Row row : rows) {
      if (isHidden(published, row, column)) {
        String name = part + "|" + row.text("group") + "|" + column;
        factors.put(name, 1.0);
        number(row, column).ifPresent(value -> truth.put(name, value));
      } else {
        rest -= number(published.get(key(row)), column).orElse(0);
      }
    }
    if (!factors.isEmpty()) {
      equations.computeIfAbsent(part, p -> new ArrayList<>()).add(new Equation(factors, rest));
    }
  }

  /** Build, upkeep and in kind make up the total. */
  private void identity(String part, Row row) {
    Map<String, Double> factors = new TreeMap<>();
    String name = part + "|" + row.text("group") + "|";
    factors.put(name + "total_usd", -1.0);
    List.of("build_usd", "upkeep_usd", "in_kind_usd").forEach(c -> factors.put(name + c, 1.0));
    equations.get(part).add(new Equation(factors, 0));
  }

  private Cell bounds(String name, double value) {
    String[] words = name.split("\\|");
    List<Equation> own = equations.get(words[0] + "|" + words[1]);
    Map<String, double[]> limits = new TreeMap<>();
    own.forEach(
        e ->
            e.factors()
                .keySet()
                .forEach(n -> limits.put(n, new double[] {0, Double.POSITIVE_INFINITY})));
    for (int round = 0; round < 20; round++) {
      own.forEach(equation -> narrow(equation, limits));
    }
    return new Cell(name, value, limits.get(name)[0], limits.get(name)[1]);
  }

  /** Narrows each figure of an equation by what the others can be at most and at least. */
  private static void narrow(Equation equation, Map<String, double[]> limits) {
    equation
        .factors()
        .forEach(
            (name, factor) -> {
              double least = equation.sum();
              double most = equation.sum();
              for (Map.Entry<String, Double> other : equation.factors().entrySet()) {
                if (!other.getKey().equals(name)) {
                  double[] range = limits.get(other.getKey());
                  double a = other.getValue() * range[0];
                  double b = other.getValue() * range[1];
                  least -= Math.max(a, b);
                  most -= Math.min(a, b);
                }
              }
              double[] own = limits.get(name);
              own[0] = Math.max(own[0], factor > 0 ? least : -most);
              own[1] = Math.min(own[1], factor > 0 ? most : -least);
            });
  }

  private static boolean isLifetime(Row row) {
    return row.has("method")
        ? row.text("method").equals("product-limit")
        : row.text("year").equals("all");
  }

  private static boolean isHidden(Map<String, Row> published, Row row, String column) {
    Row shown = published.get(key(row));
    return shown == null || shown.text(column).equals(Row.WITHHELD);
  }

  private static String key(Row row) {
    return row.text("grouping") + "|" + row.text("group") + "|" + rest(row);
  }

  private static String totalKey(Row row) {
    return "all|all|" + rest(row);
  }

  private static String rest(Row row) {
    return (row.has("year") ? row.text("year") : "") + "|" + method(row);
  }

  private static String method(Row row) {
    return row.has("method") ? row.text("method") : "";
  }

  private static OptionalDouble number(Row row, String column) {
    return row == null ? OptionalDouble.empty() : Line.of(row).number(column);
  }
}
