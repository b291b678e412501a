package pondtally.history;

import java.io.Serializable;

/** A stretch of time [from, to), in half days since 1970-01-01; never empty. */
public record Stretch(int from, int to) implements Serializable {

  public Stretch {
    if (to <= from) {
      throw new IllegalArgumentException("a stretch from " + from + " to " + to + " is empty");
    }
  }
}
