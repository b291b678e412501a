package pondtally.schema;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Units that partners write, with their size in the base unit of the dimension. Sizes are exact: an
 * inch is 0.0254 m, a foot 0.3048 m (international yard and pound agreement, 1959), an acre 43,560
 * square feet.
 */
public enum Unit {
  INCH(Dimension.LENGTH, 0.0254, "in", "inch", "inches", "ins", "\"", "″", "”", "''"),
  FOOT(Dimension.LENGTH, 0.3048, "ft", "foot", "feet", "'", "′", "’"),
  YARD(Dimension.LENGTH, 0.9144, "yd", "yard", "yards", "yds"),
  MILE(Dimension.LENGTH, 1609.344, "miles", "mile", "mi"),
  MILLIMETER(
      Dimension.LENGTH, 0.001, "mm", "millimeter", "millimeters", "millimetre", "millimetres"),
  CENTIMETER(
      Dimension.LENGTH, 0.01, "cm", "centimeter", "centimeters", "centimetre", "centimetres"),
  METER(Dimension.LENGTH, 1, "m", "meter", "meters", "metre", "metres"),
  KILOMETER(Dimension.LENGTH, 1000, "km", "kilometer", "kilometers", "kilometre", "kilometres"),
  ACRE(Dimension.AREA, 4046.8564224, "acres", "acre", "ac"),
  HECTARE(Dimension.AREA, 10_000, "ha", "hectare", "hectares"),
  SQUARE_METER(
      Dimension.AREA,
      1,
      "m²",
      "m2",
      "sqm",
      "squaremeter",
      "squaremeters",
      "squaremetre",
      "squaremetres"),
  SQUARE_FOOT(Dimension.AREA, 0.09290304, "ft²", "ft2", "sqft", "sf", "squarefoot", "squarefeet"),
  SQUARE_KILOMETER(Dimension.AREA, 1_000_000, "km²", "km2", "sqkm", "squarekilometers"),
  SQUARE_MILE(Dimension.AREA, 2_589_988.110336, "mi²", "mi2", "sqmi", "squaremiles"),
  HOUR(Dimension.TIME, 60, "hours", "hour", "hrs", "hr", "h"),
  MINUTE(Dimension.TIME, 1, "minutes", "minute", "mins", "min"),
  DOLLAR(Dimension.MONEY, 1, "usd", "us$", "$", "dollars", "dollar", "usdollars"),
  DEGREE(Dimension.ANGLE, 1, "degrees", "degree", "deg", "°");

  private static final Map<String, Unit> BY_SPELLING = new HashMap<>();

  static {
    for (Unit unit : values()) {
      for (String spelling : unit.spellings) {
        BY_SPELLING.put(spelling, unit);
      }
    }
  }

  private final Dimension dimension;
  private final double size;
  private final String[] spellings;

  Unit(Dimension dimension, double size, String... spellings) {
    this.dimension = dimension;
    this.size = size;
    this.spellings = spellings;
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** How it is written in messages, for example {@code mm}. */
  public String symbol() {
    return spellings[0];
  }

  /** {@code amount} of this unit, in {@code target}, which must be of the same dimension. */
  public double convert(double amount, Unit target) {
    if (dimension != target.dimension) {
      throw new IllegalArgumentException(this + " does not convert to " + target);
    }
    return this == target ? amount : amount * size / target.size;
  }

  /** The unit written as {@code text}, without regard to case, spaces and points. */
  public static Optional<Unit> find(String text) {
    String key = text.toLowerCase(Locale.ROOT).replace(" ", "").replace(".", "");
    return Optional.ofNullable(BY_SPELLING.get(key));
  }
}
