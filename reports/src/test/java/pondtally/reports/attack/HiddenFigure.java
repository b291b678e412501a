package pondtally.reports.attack;

import java.util.Locale;

/**
 * A withheld figure with what it is and what it is known to lie between.
 *
 * @param name table, grouping, group, other keys, column
 */
public record HiddenFigure(String name, double value, double least, double most) {

  private static final double WIDTH = 0.2;
  private static final double NOUGHT = 1e-9;

  /** Whether both limits lie within a fifth of the figure. */
  public boolean isDetermined() {
    double width = Math.max(NOUGHT, WIDTH * Math.abs(value));
    return least > value - width && most < value + width;
  }

  /** Whether the figure lies within its limits: if not, the attack is wrong. */
  public boolean isWithinLimits() {
    double slack = 1e-5 * Math.max(1, Math.abs(value));
    return least <= value + slack && most >= value - slack;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s: %s in %s to %s", name, value, least, most);
  }
}
