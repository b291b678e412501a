package pondtally.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXNotRecognizedException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * An open workbook of the Office Open XML format (ISO/IEC 29500). Sheets are streamed from the
 * file, so that memory does not grow with their rows.
 */
final class XlsxBook implements Sheets {

  /**
   * A part that unpacks to more is no partner's sheet: 1,048,576 full rows take about half of it.
   */
  private static final long LARGEST_PART = 1L << 31;

  private static final long LONGEST_TEXT = 10_000_000;

  /** Elements within elements: a sheet has about ten. */
  private static final String DEEPEST = "http://www.oracle.com/xml/jaxp/properties/maxElementDepth";

  static {
    ZipSecureFile.setMaxEntrySize(LARGEST_PART);
    ZipSecureFile.setMaxTextSize(LONGEST_TEXT);
  }

  private final OPCPackage parts;
  private final XSSFReader reader;
  private final SharedTexts texts = new SharedTexts();
  private final CellStyles styles = new CellStyles();
  private final WorkbookXml workbook = new WorkbookXml();

  private XlsxBook(OPCPackage parts) throws IOException, OpenXML4JException, SAXException {
    this.parts = parts;
    this.reader = new XSSFReader(parts);

    parseIfThere(reader.getWorkbookData(), workbook);
    parseIfThere(reader.getStylesData(), styles);
    parseIfThere(reader.getSharedStringsData(), texts);
  }

  /** Opens a workbook; see {@link Sheets#open}. */
  static XlsxBook open(Path path) throws IOException {
    OPCPackage parts = null;
    try {
      WorkbookFault.check(path);
      parts = OPCPackage.open(path.toFile(), PackageAccess.READ);
      return new XlsxBook(parts);
    } catch (OpenXML4JException | SAXException | RuntimeException | IOException e) {
      if (parts != null) {
        parts.revert();
      }
      throw WorkbookFault.inWords(e);
    }
  }

  @Override
  public List<SheetSource> all() {
    List<SheetSource> sheets = new ArrayList<>();
    for (WorkbookXml.Sheet sheet : workbook.sheets()) {
      sheets.add(new XlsxSheet(this, sheets.size(), sheet));
    }
    return sheets;
  }

  /** Streams one sheet through {@code handler}. */
  void stream(WorkbookXml.Sheet sheet, DefaultHandler handler) throws IOException {
    try (InputStream in = part(sheet)) {
      parse(in, handler);
    } catch (SAXException | IOException e) {
      throw WorkbookFault.inWords(e);
    }
  }

  private InputStream part(WorkbookXml.Sheet sheet) throws IOException {
    try {
      return reader.getSheet(sheet.relation());
    } catch (OpenXML4JException | RuntimeException e) {
      throw WorkbookFault.inWords(e);
    }
  }

  private static void parseIfThere(InputStream part, DefaultHandler handler)
      throws IOException, SAXException {
    if (part != null) {
      try (part) {
        parse(part, handler);
      }
    }
  }

  /** Java's own parser has that limit; another one on the class path may not know it. */
  private static void limitDepth(XMLReader xml) throws SAXException {
    try {
      xml.setProperty(DEEPEST, "200");
    } catch (SAXNotRecognizedException e) {
      // It reads the sheet without.
    }
  }

  private static void parse(InputStream in, DefaultHandler handler)
      throws IOException, SAXException {
    try {
      XMLReader xml = XMLHelper.newXMLReader();
      limitDepth(xml);
      xml.setContentHandler(handler);
      xml.setErrorHandler(handler);
      xml.parse(new InputSource(in));
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("every Java platform reads XML", e);
    }
  }

  /** The text that cells share under a number; null: there is none. */
  String sharedText(int number) {
    return texts.get(number);
  }

  CellStyles styles() {
    return styles;
  }

  boolean countsFrom1904() {
    return workbook.countsFrom1904();
  }

  @Override
  public void close() {
    parts.revert();
  }
}
