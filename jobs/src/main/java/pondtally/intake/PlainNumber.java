package pondtally.intake;

/** Numbers written as digits with at most a sign and a decimal point, read without an object. */
final class PlainNumber {

  private static final double[] POWERS = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
  };

  /** No number of ours has so many; a text that has more is none. */
  static final int MOST_DIGITS = 300;

  private PlainNumber() {}

  /**
   * The number, correctly rounded; NaN where the text is of another form. Up to 15 digits the
   * quotient of two exact numbers is the nearest double (Clinger 1990); beyond, the library reads
   * it.
   */
  static double parse(String text) {
    int at = text.charAt(0) == '-' ? 1 : 0;
    long digits = 0;
    int count = 0;
    int point = -1;
    for (int i = at; i < text.length(); i++) {
      int digit = text.charAt(i) - '0';
      if (digit >= 0 && digit <= 9) {
        digits = digits * 10 + digit;
        count++;
      } else if (digit == '.' - '0' && point < 0) {
        point = i;
      } else {
        return Double.NaN;
      }
    }
    if (count == 0 || count > MOST_DIGITS) {
      return Double.NaN;
    }
    if (count > 15) {
      return Double.parseDouble(text);
    }
    double value = point < 0 ? digits : digits / POWERS[text.length() - point - 1];
    return at == 0 || value == 0 ? value : -value;
  }

  /** Whether the point could be a separator of thousands: {@code 1.234}, not {@code 0.123}. */
  static boolean hasDoubtfulPoint(String text) {
    int point = text.length() - 4;
    if (point < 1 || point > 4 || text.charAt(point) != '.') {
      return false;
    }
    int first = text.charAt(0) == '-' ? 1 : 0;
    return point > first && point <= first + 3 && text.charAt(first) != '0';
  }
}
