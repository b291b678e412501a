package pondtally.analysis;

import java.io.Serializable;
import pondtally.history.Life;

/**
 * What is known of the age at which a service life first failed, ages in days: at risk after entry,
 * failed after {@code leftDays} and by {@code rightDays}.
 *
 * @param rightDays infinite where it was not seen to fail
 */
record FollowUp(double entryDays, double leftDays, double rightDays) implements Serializable {

  static FollowUp of(Life life) {
    return new FollowUp(
        life.entryAge() / 2.0,
        life.knownGoodAge() / 2.0,
        life.failed() ? life.foundAge() / 2.0 : Double.POSITIVE_INFINITY);
  }
}
