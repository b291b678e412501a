package pondtally.sample;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * The true parameters behind the sample, all invented: no published distribution of time to failure
 * by pipe type was found. Times are days, money is US dollars of {@link #BASE_YEAR}, areas are
 * acres. Estimates made from the sample can be asked whether they find these values; {@code
 * true-lives.csv} lists what was drawn from them.
 */
final class SampleTruth {
  /**
   * Chosen among the numbers from 9901 up for a sample that is like its truth: the failures of
   * every pipe type and watershed lie within two Poisson standard errors of what these parameters
   * expect, the watershed that is worse and the one that only looks so both show it, and the small
   * one stays small.
   */
  static final long SEED = 9925L;

  static final LocalDate FIRST_DAY = LocalDate.of(2017, 3, 20);
  static final LocalDate AS_OF = LocalDate.of(2025, 12, 31);
  static final int BASE_YEAR = 2024;
  static final double LABOR_RATE_USD = 32.00;
  static final double VOLUNTEER_RATE_USD = 33.49;

  /** Hazard of a device not built to specification over that of one that is. */
  static final double NOT_TO_SPECIFICATION_HAZARD = 1.6;

  /** Share of devices built to specification, whether or not the partner recorded it. */
  static final double TO_SPECIFICATION_SHARE = 0.55;

  /** Yearly hazard of each end that is not a failure. */
  static final Map<String, Double> END_PER_YEAR =
      Map.of(
          "owner-removed", 0.012, "dam-abandoned", 0.018, "site-works", 0.004, "redesign", 0.003);

  /** Wetland area of a pond at the managed level: lognormal. */
  static final double POND_MEDIAN_ACRES = 7.0;

  static final double POND_LOG_SD = 0.75;

  /** Flooded (unmanaged) extent over the area at the managed level: uniform between the two. */
  static final double FLOODED_RATIO_LOW = 1.10;

  static final double FLOODED_RATIO_HIGH = 1.45;

  /** Median labor hours of an installation, paid and volunteer together. */
  static final double INSTALL_HOURS = 21.0;

  /** Removals of animals a year after the first device, over those before. */
  static final double REMOVALS_LEFT_SHARE = 0.15;

  /**
   * Weibull shape and scale of the time to first failure, built to specification, ordinary
   * watershed.
   */
  enum Pipe {
    SINGLE_10("single", 10, 1.3, 2300, 9.50),
    SINGLE_12("single", 12, 1.3, 3000, 12.00),
    DUAL_12("dual", 12, 1.5, 5200, 17.00),
    DUAL_15("dual", 15, 1.5, 6500, 24.00),
    SMOOTH_12("smooth", 12, 1.1, 3600, 15.00),
    FENCE_ONLY("none", 0, 1.2, 4500, 0.0);

    final String wall;
    final int diameterIn;
    final double shape;
    final double scaleDays;
    final double usdPerFoot;

    Pipe(String wall, int diameterIn, double shape, double scaleDays, double usdPerFoot) {
      this.wall = wall;
      this.diameterIn = diameterIn;
      this.shape = shape;
      this.scaleDays = scaleDays;
      this.usdPerFoot = usdPerFoot;
    }
  }

  /**
   * A 12-digit watershed under the unused region 99.
   *
   * @param hazard its true hazard over an ordinary watershed's
   * @param pipeWeights share of each {@link Pipe}, in its order: some valleys use mostly one type
   */
  record Watershed(
      String code,
      String name,
      double hazard,
      double latitude,
      double longitude,
      List<Integer> pipeWeights) {}

  /** Watershed 4 is really worse; 3 only looks so, through its pipes; 8 is too small to say. */
  static final List<Watershed> WATERSHEDS =
      List.of(
          new Watershed(
              "990101010101", "Upper Tessarby", 1.0, 44.60, -37.90, List.of(2, 3, 4, 2, 1, 2)),
          new Watershed(
              "990101010102", "Lower Tessarby", 1.0, 44.55, -37.65, List.of(0, 1, 8, 2, 1, 2)),
          new Watershed(
              "990101010203", "Ostel Brook", 1.0, 44.75, -37.40, List.of(9, 2, 1, 0, 0, 1)),
          new Watershed("990101020101", "Quarrin", 1.8, 44.30, -37.85, List.of(2, 3, 4, 1, 2, 1)),
          new Watershed("990101020104", "Dunwether", 1.0, 44.28, -37.55, List.of(2, 4, 3, 2, 1, 2)),
          new Watershed(
              "990101020302", "Marrow Fen", 1.0, 44.35, -37.30, List.of(1, 1, 2, 1, 7, 1)),
          new Watershed(
              "990102010105", "Brackwen Flats", 1.0, 44.82, -37.12, List.of(1, 2, 3, 6, 1, 4)),
          new Watershed(
              "990102010206", "Far Lowmarrow", 1.0, 44.15, -37.10, List.of(1, 1, 1, 1, 1, 0)));

  static final Map<String, Double> PIPE_CAUSES =
      Map.ofEntries(
          Map.entry("fence-dammed", 0.25),
          Map.entry("pipe-plugged", 0.16),
          Map.entry("pipe-floated", 0.11),
          Map.entry("pipe-exposed", 0.07),
          Map.entry("pipe-separated", 0.07),
          Map.entry("pipe-chewed", 0.03),
          Map.entry("fence-damaged", 0.06),
          Map.entry("device-tipped", 0.03),
          Map.entry("new-dam-downstream", 0.08),
          Map.entry("over-capacity", 0.05),
          Map.entry("washed-out", 0.03),
          Map.entry("vandalism", 0.01),
          Map.entry("ice", 0.02),
          Map.entry("unknown", 0.03));

  static final Map<String, Double> FENCE_CAUSES =
      Map.of(
          "fence-dammed", 0.55,
          "fence-damaged", 0.15,
          "new-dam-downstream", 0.15,
          "washed-out", 0.05,
          "ice", 0.05,
          "unknown", 0.05);

  /**
   * US consumer price index, all urban, annual average, 1982-84 = 100 (Bureau of Labor Statistics,
   * series CUUR0000SA0); 2025 is the mean of eleven months. Makes nominal prices out of {@link
   * #BASE_YEAR} dollars.
   */
  private static final Map<Integer, Double> INDEX =
      Map.of(
          2016, 240.007, 2017, 245.120, 2018, 251.107, 2019, 255.657, 2020, 258.811, 2021, 270.970,
          2022, 292.655, 2023, 304.702, 2024, 313.689, 2025, 321.943);

  private SampleTruth() {}

  /** Dollars of the year that a base-year dollar is worth. */
  static double inflation(int year) {
    return INDEX.get(year) / INDEX.get(BASE_YEAR);
  }

  static Map<String, Double> causes(Pipe pipe) {
    return pipe == Pipe.FENCE_ONLY ? FENCE_CAUSES : PIPE_CAUSES;
  }

  /** Hazard multiplier of one device: its watershed's and its build's. */
  static double hazard(Watershed watershed, boolean toSpecification) {
    return watershed.hazard() * (toSpecification ? 1.0 : NOT_TO_SPECIFICATION_HAZARD);
  }
}
