package pondtally.reports.document;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xwpf.usermodel.XWPFDocument;

/**
 * An empty document with real styles, page size and list, put together from the XML parts beside
 * this class. A document that is made from nothing has no styles, so that its headings would only
 * look like headings.
 */
final class Template {

  private static final String[][] PARTS = {
    {"[Content_Types].xml", "content-types.xml"},
    {"_rels/.rels", "package-rels.xml"},
    {"word/document.xml", "document.xml"},
    {"word/_rels/document.xml.rels", "document-rels.xml"},
    {"word/styles.xml", "styles.xml"},
    {"word/settings.xml", "settings.xml"},
    {"word/numbering.xml", "numbering.xml"},
  };

  private Template() {}

  /** US Letter, portrait, one inch of margin at the sides. */
  static XWPFDocument open() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (String[] part : PARTS) {
        zip.putNextEntry(new ZipEntry(part[0]));
        try (InputStream in = Template.class.getResourceAsStream("template/" + part[1])) {
          in.transferTo(zip);
        }
        zip.closeEntry();
      }
    }
    return new XWPFDocument(new ByteArrayInputStream(bytes.toByteArray()));
  }
}
