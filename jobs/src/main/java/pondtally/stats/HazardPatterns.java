package pondtally.stats;

import java.io.Serializable;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * How many service lives share each pattern of stratum, covariates, entry, exit and failure: all
 * that a proportional-hazards model needs of them. Counts are whole numbers, so parts merge in any
 * order to the same patterns.
 */
public final class HazardPatterns implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * When a life was under observation: at risk after {@code entryDays} up to {@code exitDays},
   * where it failed or was last seen working.
   */
  record Span(double entryDays, double exitDays, boolean failed) implements Serializable {}

  /** A stratum and one combination of covariates. */
  static final class Profile implements Serializable, Comparable<Profile> {
    private static final long serialVersionUID = 1L;
    final String stratum;
    final double[] x;

    Profile(String stratum, double[] x) {
      this.stratum = stratum;
      this.x = x;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Profile p && stratum.equals(p.stratum) && Arrays.equals(x, p.x);
    }

    @Override
    public int hashCode() {
      return 31 * stratum.hashCode() + Arrays.hashCode(x);
    }

    @Override
    public int compareTo(Profile other) {
      int byStratum = stratum.compareTo(other.stratum);
      return byStratum != 0 ? byStratum : Arrays.compare(x, other.x);
    }
  }

  private final int columns;
  private final HashMap<Profile, HashMap<Span, Long>> spans = new HashMap<>();

  private HazardPatterns(int columns) {
    this.columns = columns;
  }

  /** An accumulator for rows of so many covariate columns. */
  public static HazardPatterns ofColumns(int columns) {
    return new HazardPatterns(columns);
  }

  /**
   * Adds lives that share one pattern.
   *
   * @param stratum within which lives are compared; one text for all if the model has no strata
   * @param x covariates, as {@link HazardDesign#encode} gives them
   * @param entryDays age after which the life is at risk
   * @param exitDays age at failure or at the last sight
   * @throws IllegalArgumentException for a wrong number of covariates, one that is not finite, exit
   *     not after entry, or a negative count
   */
  public HazardPatterns add(
      String stratum, double[] x, double entryDays, double exitDays, boolean failed, long count) {
    boolean finite =
        Arrays.stream(x).allMatch(Double::isFinite) && entryDays >= 0 && Double.isFinite(exitDays);
    if (x.length != columns || !finite || !(entryDays < exitDays) || count < 0) {
      throw new IllegalArgumentException(
          "entry="
              + entryDays
              + ", exit="
              + exitDays
              + ", count="
              + count
              + ", covariates="
              + Arrays.toString(x)
              + ": expected "
              + columns
              + " finite covariates, 0 <= entry < exit in days and a count of 0 or more");
    }
    if (count > 0) {
      double[] copy = Arrays.stream(x).map(v -> v + 0.0).toArray();
      spans
          .computeIfAbsent(new Profile(stratum, copy), p -> new HashMap<>())
          .merge(new Span(entryDays + 0.0, exitDays + 0.0, failed), count, Long::sum);
    }
    return this;
  }

  /** Adds another accumulator's lives to this one. */
  public HazardPatterns merge(HazardPatterns other) {
    if (columns != other.columns) {
      throw new IllegalArgumentException(
          "cannot merge " + other.columns + " covariate columns into " + columns);
    }
    other.spans.forEach(
        (profile, theirs) -> {
          HashMap<Span, Long> ours = spans.computeIfAbsent(profile, p -> new HashMap<>());
          theirs.forEach((span, count) -> ours.merge(span, count, Long::sum));
        });
    return this;
  }

  /** Number of covariate columns. */
  public int columns() {
    return columns;
  }

  /** Number of distinct patterns. */
  public int distinct() {
    return spans.values().stream().mapToInt(Map::size).sum();
  }

  /** The spans of each profile; profiles in order, spans in none. */
  NavigableMap<Profile, Map<Span, Long>> profiles() {
    return new TreeMap<>(spans);
  }
}
