package pondtally.history;

import java.util.ArrayList;
import java.util.List;

/**
 * Verified functional time: from entry to the last visit, less each stretch from a failure's
 * midpoint to its restart, whatever day stands for the failure in curves. Common practice, no
 * source.
 */
final class FunctionRule {

  private FunctionRule() {}

  /** The part of {@code time} in which the device was not failed. */
  static Stretches functional(Stretches time, List<Failure> failures) {
    return failures.isEmpty() || time.isEmpty() ? time : time.minus(down(failures));
  }

  private static Stretches down(List<Failure> failures) {
    List<Stretch> down = new ArrayList<>(failures.size());
    for (Failure failure : failures) {
      int to = failure.restartedOn() == null ? Integer.MAX_VALUE : failure.restartedOn();
      down.add(new Stretch(failure.midpoint(), to));
    }
    return Stretches.of(down);
  }
}
