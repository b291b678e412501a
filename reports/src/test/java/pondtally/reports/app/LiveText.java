package pondtally.reports.app;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;
import pondtally.reports.workbook.SafeText;

/** Looks through an output for payloads of {@link FormulaProgram}: which are there, which live. */
final class LiveText {

  /**
   * What was found.
   *
   * @param payloads numbers of the payloads
   * @param live what would run, with the place
   */
  record Found(Set<String> payloads, int texts, Set<String> live) {}

  private static final Pattern MARK = Pattern.compile(FormulaProgram.MARK + "\\d{4}");
  private static final Pattern TAG =
      Pattern.compile(
          "<(/?[a-zA-Z][\\w:-]*)((?:\\s+[\\w:.@-]+(?:\\s*=\\s*(?:\"[^\"]*\"|'[^']*'|[^\\s>\"']+))?)*)\\s*/?>");
  private static final Pattern ATTRIBUTE =
      Pattern.compile("([\\w:.@-]+)(?:\\s*=\\s*(\"[^\"]*\"|'[^']*'|[^\\s>\"']+))?");
  private static final Pattern ACTIVE =
      Pattern.compile("on.*|href|.*:href|src|srcdoc|action|style|id|class|data");

  /** Elements whose text is more than text: formulas, names, fields, scripts. */
  private static final Set<String> ACTIVE_ELEMENTS =
      Set.of(
          "f",
          "c:f",
          "definedname",
          "formula",
          "formula1",
          "formula2",
          "w:instrtext",
          "w:fldsimple",
          "script",
          "style",
          "hyperlink",
          "relationship",
          "ddelink");

  private final Set<String> payloads = new TreeSet<>();
  private final Set<String> live = new TreeSet<>();
  private int texts;

  private LiveText() {}

  /** Looks through a file, or through all files of a folder. */
  static Found in(Path path) throws IOException {
    LiveText found = new LiveText();
    try (Stream<Path> files = Files.walk(path)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        found.file(file);
      }
    }
    return new Found(found.payloads, found.texts, found.live);
  }

  private void file(Path file) throws IOException {
    String name = file.getFileName().toString();
    if (name.endsWith(".xlsx")) {
      cells(file);
    }
    if (name.endsWith(".xlsx") || name.endsWith(".docx")) {
      parts(file);
    } else if (name.endsWith(".svg")) {
      xml(name, Files.readAllBytes(file));
    } else if (name.endsWith(".html")) {
      html(Files.readString(file));
    }
  }

  // Spreadsheets

  private void cells(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      for (int i = 0; i < book.getNumberOfSheets(); i++) {
        XSSFSheet sheet = book.getSheetAt(i);
        for (Row row : sheet) {
          row.forEach(cell -> cell(sheet.getSheetName(), cell));
        }
      }
    }
  }

  private void cell(String sheet, Cell cell) {
    String place = sheet + " " + cell.getAddress();
    if (cell.getCellType() == CellType.FORMULA) {
      if (MARK.matcher(cell.getCellFormula()).find()) {
        live.add(place + ": " + cell.getCellFormula());
      }
    } else if (cell.getCellType() == CellType.STRING) {
      String text = cell.getStringCellValue();
      boolean needsMark = SafeText.looksLikeFormula(text) && MARK.matcher(text).find();
      if (needsMark && !cell.getCellStyle().getQuotePrefixed()) {
        live.add(place + " has no quote prefix: " + text);
      }
    }
  }

  private void parts(Path file) throws IOException {
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().matches(".*(externalLink|vbaProject|embeddings|activeX).*")) {
          live.add(entry.getName());
        }
        if (entry.getName().matches(".*\\.(xml|rels)")) {
          xml(entry.getName(), zip.readAllBytes());
        }
      }
    }
  }

  // XML

  private void xml(String name, byte[] content) throws IOException {
    try {
      SAXParserFactory factory = SAXParserFactory.newInstance();
      factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      factory
          .newSAXParser()
          .parse(new InputSource(new ByteArrayInputStream(content)), new Texts(name));
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException(name, e);
    }
  }

  private final class Texts extends DefaultHandler {
    private final String part;
    private final StringBuilder text = new StringBuilder();

    Texts(String part) {
      this.part = part;
    }

    @Override
    public void startElement(String uri, String local, String element, Attributes attributes) {
      text.setLength(0);
      String key = element.toLowerCase(Locale.ROOT);
      for (int i = 0; i < attributes.getLength(); i++) {
        attribute(part, key, attributes.getQName(i), attributes.getValue(i));
      }
    }

    @Override
    public void characters(char[] characters, int start, int length) {
      text.append(characters, start, length);
    }

    @Override
    public void endElement(String uri, String local, String element) {
      text(part, element.toLowerCase(Locale.ROOT), text.toString());
      text.setLength(0);
    }
  }

  private void attribute(String place, String element, String name, String value) {
    if (see(value)
        && (ACTIVE.matcher(name.toLowerCase(Locale.ROOT)).matches()
            || ACTIVE_ELEMENTS.contains(element))) {
      live.add(place + " " + element + "/" + name + ": " + value);
    }
  }

  private void text(String place, String element, String text) {
    if (see(text) && ACTIVE_ELEMENTS.contains(element)) {
      live.add(place + " " + element + ": " + text);
    }
  }

  private boolean see(String text) {
    Matcher mark = MARK.matcher(text);
    boolean any = false;
    while (mark.find()) {
      payloads.add(mark.group());
      any = true;
    }
    texts += any ? 1 : 0;
    return any;
  }

  // Pages

  /** Every tag of the page; what stands between two is the text of the first. */
  private void html(String page) {
    Matcher tag = TAG.matcher(page);
    int from = 0;
    String element = "";
    while (tag.find(from)) {
      text("page", element, page.substring(from, tag.start()));
      element = tag.group(1).toLowerCase(Locale.ROOT);
      Matcher attribute = ATTRIBUTE.matcher(tag.group(2));
      while (attribute.find()) {
        attribute("page", element, attribute.group(1), String.valueOf(attribute.group(2)));
      }
      boolean isScript = element.equals("script") || element.equals("style");
      int end = isScript ? page.indexOf("</" + element, tag.end()) : tag.end();
      if (isScript) {
        text("page", element, page.substring(tag.end(), end));
      }
      from = end;
    }
    text("page", "", page.substring(from));
    if (Pattern.compile("<[^>]*['\"=\\s]live-" + FormulaProgram.MARK).matcher(page).find()) {
      live.add("page: a tag of a payload stands unescaped");
    }
  }
}
