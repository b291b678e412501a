package pondtally.analysis;

import java.io.Serializable;
import pondtally.record.Origin;

/**
 * One amount of a device's cost.
 *
 * @param origin the row it came from
 * @param day when it was spent, days since 1970-01-01
 * @param stage building the device, or keeping it up
 * @param payment cash, in-kind, or volunteers' hours
 * @param payer who paid; null where nobody is named
 * @param matchFor award that an in-kind or volunteer value is claimed against; null: unclaimed
 * @param nominalUsd dollars as paid
 * @param realUsd dollars of the base year; null where the year lies before the price index
 * @param indexProvisional whether the index that turned it into dollars of the base year is not
 *     final: that of the last year stands for a later one, or rests on less than twelve months
 */
public record CostLine(
    Origin origin,
    int day,
    Stage stage,
    Payment payment,
    String payer,
    String matchFor,
    double nominalUsd,
    Double realUsd,
    boolean indexProvisional)
    implements Serializable {

  /** What a cost was for. */
  public enum Stage {
    BUILD,
    UPKEEP
  }

  /** How a cost was met. */
  public enum Payment {
    CASH,
    IN_KIND,
    VOLUNTEER
  }
}
