package pondtally.intake;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** The texts that the cells of a workbook share, without their formats and readings aloud. */
final class SharedTexts extends DefaultHandler {

  /** A longer text is not read to its end; a cell holds 32,767 characters at most. */
  static final int LONGEST = 100_000;

  private static final long MOST_CHARACTERS = 100_000_000;

  private final List<String> texts = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private long characters;
  private boolean isInText;
  private int phoneticDepth;

  @Override
  public void startElement(String uri, String localName, String qName, Attributes attributes) {
    switch (localName) {
      case "si" -> text.setLength(0);
      case "t" -> isInText = phoneticDepth == 0;
      case "rPh" -> phoneticDepth++;
      default -> {}
    }
  }

  @Override
  public void endElement(String uri, String localName, String qName) throws SAXException {
    switch (localName) {
      case "si" -> add(text.toString());
      case "t" -> isInText = false;
      case "rPh" -> phoneticDepth--;
      default -> {}
    }
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    if (isInText && text.length() <= LONGEST) {
      text.append(characters, start, length);
    }
  }

  private void add(String shared) throws SAXException {
    characters += shared.length();
    if (characters > MOST_CHARACTERS) {
      throw new SAXException("its cells share more than 100,000,000 characters");
    }
    texts.add(shared);
  }

  /** The text of a number; null: there is none. */
  String get(int number) {
    return number < texts.size() ? texts.get(number) : null;
  }
}
