package pondtally.intake;

/** Signs of currencies. */
final class CurrencySign {

  private CurrencySign() {}

  /** Whether the text holds a currency sign, as {@code CA$} does. */
  static boolean isIn(String text) {
    return text.chars().anyMatch(c -> Character.getType(c) == Character.CURRENCY_SYMBOL);
  }
}
