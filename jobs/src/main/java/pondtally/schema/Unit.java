package pondtally.schema;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Units that partners write, with their size in a unit so small that all sizes are whole numbers: a
 * ten-millionth of a meter, a hundred-millionth of a square meter, a minute. An inch is 0.0254 m, a
 * foot 0.3048 m (international yard and pound agreement, 1959), an acre 43,560 square feet.
 */
public enum Unit {
  INCH(Dimension.LENGTH, 254_000, "inches", "in", "inch", "ins", "\"", "″", "”", "''"),
  FOOT(Dimension.LENGTH, 3_048_000, "feet", "ft", "foot", "'", "′", "’"),
  YARD(Dimension.LENGTH, 9_144_000, "yards", "yd", "yard", "yds"),
  MILE(Dimension.LENGTH, 16_093_440_000L, "miles", "mi", "mile"),
  MILLIMETER(
      Dimension.LENGTH, 10_000, "millimeters", "mm", "millimeter", "millimetre", "millimetres"),
  CENTIMETER(
      Dimension.LENGTH, 100_000, "centimeters", "cm", "centimeter", "centimetre", "centimetres"),
  METER(Dimension.LENGTH, 10_000_000, "meters", "m", "meter", "metre", "metres"),
  KILOMETER(
      Dimension.LENGTH,
      10_000_000_000L,
      "kilometers",
      "km",
      "kilometer",
      "kilometre",
      "kilometres"),
  ACRE(Dimension.AREA, 404_685_642_240L, "acres", "ac", "acre"),
  HECTARE(Dimension.AREA, 1_000_000_000_000L, "hectares", "ha", "hectare"),
  SQUARE_METER(
      Dimension.AREA,
      100_000_000,
      "square meters",
      "m²",
      "m2",
      "sqm",
      "squaremeter",
      "squaremetre",
      "squaremetres"),
  SQUARE_FOOT(Dimension.AREA, 9_290_304, "square feet", "ft²", "ft2", "sqft", "sf", "squarefoot"),
  SQUARE_KILOMETER(Dimension.AREA, 100_000_000_000_000L, "square kilometers", "km²", "km2", "sqkm"),
  SQUARE_MILE(Dimension.AREA, 258_998_811_033_600L, "square miles", "mi²", "mi2", "sqmi"),
  HOUR(Dimension.TIME, 60, "hours", "h", "hour", "hrs", "hr"),
  MINUTE(Dimension.TIME, 1, "minutes", "min", "minute", "mins"),
  DOLLAR(Dimension.MONEY, 1, "dollars", "USD", "usd", "us$", "$", "dollar", "usdollars"),
  DEGREE(Dimension.ANGLE, 1, "degrees", "°", "degree", "deg");

  private static final Map<String, Unit> BY_SPELLING = new HashMap<>();

  static {
    for (Unit unit : values()) {
      BY_SPELLING.put(key(unit.plural), unit);
      for (String spelling : unit.spellings.split(" ", -1)) {
        BY_SPELLING.put(key(spelling), unit);
      }
    }
  }

  private final Dimension dimension;
  private final long size;
  private final String plural;
  private final String symbol;
  private final String spellings;

  Unit(Dimension dimension, long size, String plural, String... spellings) {
    this.dimension = dimension;
    this.size = size;
    this.plural = plural;
    this.symbol = spellings[0];
    this.spellings = String.join(" ", spellings);
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** Short form for messages, for example {@code mm}. */
  public String symbol() {
    return symbol;
  }

  /** Name for messages, for example {@code millimeters}. */
  public String plural() {
    return plural;
  }

  /** {@code amount} of this unit, in {@code target}, which must be of the same dimension. */
  public double convert(double amount, Unit target) {
    if (dimension != target.dimension) {
      throw new IllegalArgumentException(this + " does not convert to " + target);
    }
    // Whole sizes: 304.8 mm are 12 in exactly, with no digit of noise.
    return this == target ? amount : amount * size / target.size;
  }

  /** The unit written as {@code text}, without regard to case, spaces and points. */
  public static Optional<Unit> find(String text) {
    return Optional.ofNullable(BY_SPELLING.get(key(text)));
  }

  private static String key(String text) {
    return text.toLowerCase(Locale.ROOT).replace(" ", "").replace(".", "");
  }
}
