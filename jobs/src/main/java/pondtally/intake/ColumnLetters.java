package pondtally.intake;

/** Columns as spreadsheets name them. */
final class ColumnLetters {

  private ColumnLetters() {}

  /** A for 0, Z for 25, AA for 26. */
  static String of(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
      letters.insert(0, (char) ('A' + (rest - 1) % 26));
    }
    return letters.toString();
  }

  /** 0 for A1, 27 for AB7; -1 where the reference does not begin with letters. */
  static int column(String reference) {
    int column = 0;
    int i = 0;
    while (i < reference.length() && i < 4) {
      int letter = Character.toUpperCase(reference.charAt(i)) - 'A';
      if (letter < 0 || letter > 25) {
        break;
      }
      column = column * 26 + letter + 1;
      i++;
    }
    return column - 1;
  }
}
