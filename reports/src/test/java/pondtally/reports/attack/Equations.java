package pondtally.reports.attack;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Everything that is known about unknown figures, and the least and the most that each can be:
 * linear programs, solved by ojAlgo.
 */
final class Equations {

  private final Map<String, List<Equation>> byName = new HashMap<>();
  private final Set<String> signed = new TreeSet<>();
  private final Map<Set<String>, Part> parts = new HashMap<>();
  private final Map<String, double[]> known = new HashMap<>();

  /** Figures that hang together, with all that is known of them. */
  private record Part(List<String> names, List<Equation> equations, Map<String, Double> units) {}

  void add(Map<String, Double> factors, double sum) {
    add(new Equation(factors, sum, false));
  }

  void atMost(Map<String, Double> factors, double sum) {
    add(new Equation(factors, sum, true));
  }

  private void add(Equation equation) {
    equation
        .factors()
        .keySet()
        .forEach(name -> byName.computeIfAbsent(name, n -> new ArrayList<>()).add(equation));
  }

  /** A figure that may be negative. */
  void mayBeNegative(String name) {
    signed.add(name);
  }

  boolean knows(String name) {
    return byName.containsKey(name);
  }

  /** The least and the most that a figure can be. */
  double[] limits(String name) {
    return known.computeIfAbsent(name, this::work).clone();
  }

  private double[] work(String name) {
    double floor = signed.contains(name) ? Double.NEGATIVE_INFINITY : 0;
    if (!knows(name)) {
      return new double[] {floor, Double.POSITIVE_INFINITY};
    }
    Part part = part(name);
    return new double[] {Math.max(floor, solve(part, name, true)), solve(part, name, false)};
  }

  private Part part(String start) {
    for (Map.Entry<Set<String>, Part> known : parts.entrySet()) {
      if (known.getKey().contains(start)) {
        return known.getValue();
      }
    }
    Set<String> names = new TreeSet<>(Set.of(start));
    Set<Equation> equations = new LinkedHashSet<>();
    Deque<String> left = new ArrayDeque<>(names);
    while (!left.isEmpty()) {
      for (Equation equation : byName.getOrDefault(left.pop(), List.of())) {
        if (equations.add(equation)) {
          equation.factors().keySet().stream().filter(names::add).forEach(left::push);
        }
      }
    }
    Map<String, Double> units = new TreeMap<>();
    names.forEach(name -> units.put(name, unit(name)));
    List<Equation> scaled = equations.stream().map(e -> e.scaled(units)).toList();
    Part part = new Part(List.copyOf(names), scaled, units);
    parts.put(names, part);
    return part;
  }

  /** The order of a figure's size, from the sums that it stands in. */
  private double unit(String name) {
    return byName.get(name).stream()
        .mapToDouble(e -> Math.abs(e.sum() / e.factors().get(name)))
        .filter(sum -> sum > 0)
        .min()
        .orElse(1);
  }

  private double solve(Part part, String name, boolean isLeast) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Map<String, Variable> variables = new HashMap<>();
    for (String each : part.names()) {
      Variable variable = model.addVariable(each);
      variables.put(each, signed.contains(each) ? variable : variable.lower(0));
    }
    for (int i = 0; i < part.equations().size(); i++) {
      Equation equation = part.equations().get(i);
      Expression row = model.addExpression("equation " + i);
      equation.factors().forEach((each, factor) -> row.set(variables.get(each), factor));
      if (equation.isLimit()) {
        row.upper(equation.sum());
      } else {
        row.level(equation.sum());
      }
    }
    variables.get(name).weight(1);
    Optimisation.Result result = isLeast ? model.minimise() : model.maximise();
    if (result.getState() == Optimisation.State.UNBOUNDED) {
      return isLeast ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    if (!result.getState().isOptimal()) {
      throw new IllegalStateException(
          "the equations around %s do not agree: %s".formatted(name, result.getState()));
    }
    return part.units().get(name) * result.getValue();
  }
}
