package pondtally.analysis;

import java.io.Serializable;
import java.util.List;
import pondtally.record.Origin;

/**
 * What one device cost so far.
 *
 * @param lines every amount
 * @param built whether any record of its building cost exists: without one its cost is unknown, not
 *     zero
 * @param volunteerHours by day, valued or not
 * @param lumpSumDifferenceUsd lump sum less the lines and hours that were used instead; null where
 *     there was only one of the two
 */
public record DeviceCost(
    List<CostLine> lines,
    boolean built,
    List<DatedHours> volunteerHours,
    Double lumpSumDifferenceUsd)
    implements Serializable {

  /** Hours given on a day (days since 1970-01-01). */
  public record DatedHours(Origin origin, int day, double hours) implements Serializable {}

  /**
   * Cost in dollars of the base year by the day before {@code endDay}; lines whose year has no
   * index are left out.
   */
  public double realUsd(int endDay) {
    double sum = 0;
    for (CostLine line : lines) {
      if (line.day() < endDay && line.realUsd() != null) {
        sum += line.realUsd();
      }
    }
    return sum;
  }
}
