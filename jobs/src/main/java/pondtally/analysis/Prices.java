package pondtally.analysis;

import java.io.Serializable;
import pondtally.stats.PriceIndex;

/**
 * Converts dollars of one year into dollars of the base year: nominal x index(base) / index(year).
 */
public final class Prices implements Serializable {

  private static final long serialVersionUID = 1;

  private final PriceIndex index;
  private final int baseYear;

  /**
   * @param baseYear a year of the index
   */
  public Prices(PriceIndex index, int baseYear) {
    this.index = index;
    this.baseYear = baseYear;
  }

  /** Price year of converted dollars. */
  public int baseYear() {
    return baseYear;
  }

  /**
   * Dollars of the base year; null where {@code year} lies before the index. A later year takes the
   * last index year.
   */
  public Double real(double nominalUsd, int year) {
    return year < index.firstYear()
        ? null
        : (Double) (nominalUsd * index.factor(index.nearestYear(year), baseYear));
  }

  /**
   * Whether the index of {@code year} is not final: a later year than the last, or one whose index
   * rests on less than twelve months. Dollars of the base year need no index.
   */
  public boolean isProvisional(int year) {
    return year != baseYear
        && year >= index.firstYear()
        && (year > index.lastYear() || index.isProvisional(year));
  }
}
