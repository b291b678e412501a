package pondtally.intake;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/** Fuzz target: numbers, against the library's exact decimals. */
public final class FuzzNumbers {

  private static final Pattern PLAIN = Pattern.compile("-?(\\d+\\.?\\d*|\\.\\d+)");
  private static final int LONGEST = 300;

  private FuzzNumbers() {}

  public static void fuzzerTestOneInput(byte[] data) {
    String text = Blank.clean(new String(data, StandardCharsets.UTF_8));
    if (text.isEmpty()) {
      return;
    }
    boolean isPlain = PLAIN.matcher(text).matches() && text.length() <= LONGEST;
    double number = PlainNumber.parse(text);
    if (isPlain) {
      require(number == new BigDecimal(text).doubleValue(), text);
    } else if (text.length() <= LONGEST) {
      require(Double.isNaN(number), text);
    }
    NumberText parts = NumberText.of(text);
    switch (parts.mark()) {
      case BROKEN -> {}
      case COMMA -> require(isFinite(parts.withComma()), text);
      case NONE, POINT, DOUBTFUL_POINT -> require(isFinite(parts.withPoint()), text);
      case DOUBTFUL_COMMA ->
          require(parts.withPoint() == 1000 * parts.withComma() || isClose(parts), text);
    }
    if (isPlain && parts.mark() != NumberText.Mark.BROKEN) {
      require(parts.withPoint() == number, text);
    }
  }

  private static boolean isFinite(double number) {
    return !Double.isNaN(number);
  }

  private static boolean isClose(NumberText parts) {
    return Math.abs(parts.withPoint() - 1000 * parts.withComma())
        <= 1e-9 * Math.abs(parts.withPoint());
  }

  private static void require(boolean holds, String text) {
    if (!holds) {
      throw new AssertionError(text);
    }
  }
}
