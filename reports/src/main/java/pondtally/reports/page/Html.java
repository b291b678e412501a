package pondtally.reports.page;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes a page in the syntax that HTML and XML share, so that browsers read it and any XML parser
 * can check it. Text is escaped; characters that no page may hold are replaced.
 */
final class Html {

  private static final String DOCTYPE = "<!DOCTYPE html>\n";
  private static final String[] VOID = {"meta", "link", "br", "use"};

  private final StringWriter page = new StringWriter();
  private final XMLStreamWriter xml;

  Html() {
    try {
      xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(page);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Opens an element; names and values of its attributes in turn. */
  Html open(String tag, String... attributes) {
    return write(
        () -> {
          xml.writeStartElement(tag);
          attributes(attributes);
        });
  }

  Html close() {
    return write(xml::writeEndElement);
  }

  /** Starts a line of its own, so that the file can be read and compared. */
  Html line() {
    return text("\n");
  }

  Html text(String text) {
    return write(() -> xml.writeCharacters(printable(text)));
  }

  /** An element with nothing but text in it. */
  Html element(String tag, String text, String... attributes) {
    return open(tag, attributes).text(text).close();
  }

  /** An element that has no content and no end, as {@code meta}. */
  Html single(String tag, String... attributes) {
    if (!java.util.List.of(VOID).contains(tag)) {
      throw new IllegalArgumentException(tag + " needs an end");
    }
    return write(
        () -> {
          xml.writeEmptyElement(tag);
          attributes(attributes);
        });
  }

  /** Markup that is finished already: our own style sheet, or a chart of ours. */
  Html finished(String markup) {
    return write(
        () -> {
          xml.writeCharacters("");
          xml.flush();
          page.write(markup);
        });
  }

  /** The whole page. */
  String page() {
    write(xml::flush);
    return DOCTYPE + page + "\n";
  }

  private void attributes(String... namesAndValues) throws XMLStreamException {
    for (int i = 0; i < namesAndValues.length; i += 2) {
      xml.writeAttribute(namesAndValues[i], printable(namesAndValues[i + 1]));
    }
  }

  /** No control characters and no half of a surrogate pair: XML and browsers refuse them. */
  private static String printable(String text) {
    return text.codePoints()
        .map(c -> allowed(c) ? c : 0xFFFD)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static boolean allowed(int c) {
    return c == '\n'
        || c == '\t'
        || (c >= 0x20 && c < 0x7F)
        || (c >= 0xA0 && c < 0xD800)
        || (c >= 0xE000 && c < 0xFFFE)
        || c >= 0x10000;
  }

  private Html write(Step step) {
    try {
      step.run();
      return this;
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  private interface Step {
    void run() throws XMLStreamException;
  }
}
