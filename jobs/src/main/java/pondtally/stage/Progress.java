package pondtally.stage;

import java.util.concurrent.atomic.LongAdder;

/**
 * What the run in this Java machine is doing, to be shown while it works. Tasks on other machines
 * are not counted.
 */
public final class Progress {

  /** Parts of a run, in their order. */
  public enum Step {
    STARTING,
    READING,
    COUNTING,
    ANALYSING,
    WRITING
  }

  private static final LongAdder ROWS = new LongAdder();
  private static volatile Step step = Step.STARTING;

  private Progress() {}

  /** A row was read. */
  static void row() {
    ROWS.increment();
  }

  /** The next part of the run begins. */
  public static void now(Step next) {
    step = next;
  }

  /** The part of the run that is under way. */
  public static Step step() {
    return step;
  }

  /** Rows read so far. */
  public static long rowsRead() {
    return ROWS.sum();
  }
}
