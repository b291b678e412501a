package pondtally.intake;

/**
 * What the cells of a column that can be read in one way only say about those that cannot.
 *
 * @param first cells that prove the first way: day before month, or a decimal point
 * @param second cells that prove the second way: month before day, or a decimal comma
 */
record Clues(int first, int second) {

  static final Clues NONE = new Clues(0, 0);

  Clues plus(Clues other) {
    return new Clues(first + other.first, second + other.second);
  }

  boolean onlyFirst() {
    return first > 0 && second == 0;
  }

  boolean onlySecond() {
    return second > 0 && first == 0;
  }
}
