package pondtally.intake;

/** Follows whether a text stands inside a quotation, cell by cell. */
final class QuoteState {

  private final char separator;
  private boolean isOpen;
  private boolean isCellStart = true;

  QuoteState(char separator) {
    this.separator = separator;
  }

  void read(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isOpen) {
        // A doubled mark closes and opens again, which comes to the same.
        isOpen = c != '"';
        isCellStart = c == '"';
      } else if (c == '"') {
        isOpen = isCellStart;
      } else {
        isCellStart = c == separator || (isCellStart && c == ' ');
      }
    }
  }

  boolean isOpen() {
    return isOpen;
  }
}
