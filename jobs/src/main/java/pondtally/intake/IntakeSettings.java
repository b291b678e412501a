package pondtally.intake;

import java.io.Serializable;
import java.time.LocalDate;

/**
 * What reading partner files has to know.
 *
 * @param today day of the run, days since 1970-01-01
 */
public record IntakeSettings(int today) implements Serializable {

  /** Settings of a run on {@code today}. */
  public static IntakeSettings on(LocalDate today) {
    return new IntakeSettings((int) today.toEpochDay());
  }
}
