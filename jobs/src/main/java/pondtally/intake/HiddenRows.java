package pondtally.intake;

/** How many filled rows of a sheet are hidden, by hand or by a filter, and the first of them. */
final class HiddenRows {

  private int first;
  private int count;

  void add(int row) {
    first = count == 0 ? row : first;
    count++;
  }

  /** How many, and where they begin; empty where no row is hidden. */
  String message() {
    if (count == 0) {
      return "";
    }
    return (count == 1
            ? "Row %s is hidden.".formatted(first)
            : "%s rows are hidden, the first of them row %s.".formatted(count, first))
        + " Hidden rows were read all the same.";
  }
}
