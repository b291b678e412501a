package pondtally.reports.attack;

import java.util.Map;
import java.util.TreeMap;

/**
 * Unknown figures, each with a factor, add up to a known value (or, where it is a limit, to at most
 * that value).
 */
record Equation(Map<String, Double> factors, double sum, boolean isLimit) {

  Equation {
    factors = new TreeMap<>(factors);
  }

  /** The same with factors of the order of 1. */
  Equation scaled(Map<String, Double> units) {
    Map<String, Double> scaled = new TreeMap<>();
    factors.forEach((name, factor) -> scaled.put(name, factor * units.get(name)));
    double most = scaled.values().stream().mapToDouble(Math::abs).max().orElse(1);
    scaled.replaceAll((name, factor) -> factor / most);
    return new Equation(scaled, sum / most, isLimit);
  }
}
