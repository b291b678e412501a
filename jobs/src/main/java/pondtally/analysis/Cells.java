package pondtally.analysis;

import java.util.OptionalDouble;

/** Cells of result tables from values that may not be known. */
final class Cells {

  private Cells() {}

  /** Null, that is an empty cell, where the value is not known. */
  static Double of(OptionalDouble value) {
    return value.isPresent() ? (Double) value.getAsDouble() : null;
  }
}
