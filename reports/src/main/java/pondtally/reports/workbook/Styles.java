package pondtally.reports.workbook;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontScheme;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.DefaultIndexedColorMap;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cell styles of one workbook, each made once. */
public final class Styles {

  /** Dark slate: white letters on it have a contrast of more than 10 to 1. */
  private static final byte[] HEADER_FILL = {0x26, 0x3B, 0x4A};

  private static final byte[] FAULT_FILL = {(byte) 0xFF, (byte) 0xE8, (byte) 0xB3};
  private static final byte[] LINK_BLUE = {0x00, 0x56, (byte) 0x8C};

  /** A font whose widths free fonts copy, so that lines break alike in every program. */
  private static final String FONT = "Arial";

  private static final int NORMAL_POINTS = 10;
  private static final int SMALL_POINTS = 6;

  /** Keeps text away from the number in the column before it. */
  private static final short INDENT = 1;

  private final XSSFWorkbook book;
  private final Map<Format, CellStyle> plain = new EnumMap<>(Format.class);
  private final Map<Format, CellStyle> quoted = new EnumMap<>(Format.class);
  private final Map<Format, CellStyle> totals = new EnumMap<>(Format.class);
  private final Map<Format, CellStyle> inputs = new EnumMap<>(Format.class);
  private final Map<Short, CellStyle> guarded = new HashMap<>();
  private final CellStyle totalUnknown;
  private final CellStyle title;
  private final CellStyle note;
  private final CellStyle section;
  private final CellStyle prose;
  private final CellStyle header;
  private final CellStyle quotedHeader;
  private final CellStyle headerNumber;
  private final CellStyle small;
  private final CellStyle unknownText;
  private final CellStyle unknown;
  private final CellStyle link;
  private final CellStyle fault;
  private final CellStyle quotedFault;

  public Styles(XSSFWorkbook book) {
    this.book = book;
    plainFont(book.getFontAt(0), NORMAL_POINTS);
    for (Format format : Format.values()) {
      plain.put(format, data(format));
      quoted.put(format, quoted(data(format)));
      totals.put(format, total(format));
    }
    totalUnknown = total(Format.COUNT);
    totalUnknown.setAlignment(HorizontalAlignment.RIGHT);
    title = withFont(bold(16));
    note = withFont(gray());
    section = withFont(bold(13));
    prose = wrapped(book.createCellStyle());
    header = headerLook(HorizontalAlignment.LEFT);
    quotedHeader = quoted(headerLook(HorizontalAlignment.LEFT));
    headerNumber = headerLook(HorizontalAlignment.RIGHT);
    unknownText = withFont(gray());
    unknownText.setVerticalAlignment(VerticalAlignment.TOP);
    unknownText.setAlignment(HorizontalAlignment.LEFT);
    unknownText.setIndention(INDENT);
    small = withFont(smallGray());
    small.setVerticalAlignment(VerticalAlignment.TOP);
    small.setDataFormat(book.createDataFormat().getFormat(Format.TEXT.pattern()));
    unknown = withFont(gray());
    unknown.setAlignment(HorizontalAlignment.RIGHT);
    unknown.setVerticalAlignment(VerticalAlignment.TOP);
    link = withFont(linkFont());
    fault = fault();
    quotedFault = quoted(fault());
  }

  /** The style of a number. */
  public CellStyle number(Format format) {
    return plain.get(format);
  }

  /**
   * The style of a text cell.
   *
   * @param looksLikeFormula sets the mark that keeps the cell text when it is edited
   */
  CellStyle text(Format format, boolean looksLikeFormula) {
    Format text = format.isText() ? format : Format.TEXT;
    return looksLikeFormula ? quoted.get(text) : plain.get(text);
  }

  /** The style, with the mark that keeps a cell text where the text looks like a formula. */
  public CellStyle guarded(CellStyle style, String text) {
    return SafeText.looksLikeFormula(text)
        ? guarded.computeIfAbsent(style.getIndex(), index -> quoted(copy(style)))
        : style;
  }

  private CellStyle copy(CellStyle style) {
    CellStyle copy = book.createCellStyle();
    copy.cloneStyleFrom(style);
    return copy;
  }

  /** A cell that the reader may change: framed, not told by color alone. */
  CellStyle input(Format format) {
    return inputs.computeIfAbsent(format, this::inputLook);
  }

  private CellStyle inputLook(Format format) {
    CellStyle style = data(format);
    style.setFont(bold(NORMAL_POINTS));
    style.setBorderTop(BorderStyle.MEDIUM);
    style.setBorderBottom(BorderStyle.MEDIUM);
    style.setBorderLeft(BorderStyle.MEDIUM);
    style.setBorderRight(BorderStyle.MEDIUM);
    return style;
  }

  /** "Not known" among the totals. */
  CellStyle totalUnknown() {
    return totalUnknown;
  }

  CellStyle total(boolean isNumber, Format format) {
    return totals.get(isNumber ? format : Format.TEXT);
  }

  public CellStyle title() {
    return title;
  }

  public CellStyle note() {
    return note;
  }

  public CellStyle section() {
    return section;
  }

  /** Wrapped paragraphs. */
  public CellStyle prose() {
    return prose;
  }

  /** Headings stand where the cells under them stand. */
  public CellStyle header(Format format) {
    return format.isText() ? header : headerNumber;
  }

  /** A heading that a partner wrote. */
  public CellStyle header(boolean looksLikeFormula) {
    return looksLikeFormula ? quotedHeader : header;
  }

  /** "Not known" and "withheld". */
  CellStyle unknown(Format format) {
    return format.isText() ? unknownText : unknown;
  }

  /** What is there for the program rather than for people. */
  public CellStyle small() {
    return small;
  }

  CellStyle link() {
    return link;
  }

  /** A partner's cell that is at fault: filled, framed and bold, so not told by color alone. */
  public CellStyle fault(boolean looksLikeFormula) {
    return looksLikeFormula ? quotedFault : fault;
  }

  private CellStyle data(Format format) {
    CellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat(format.pattern()));
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setWrapText(format == Format.WRAPPED);
    if (format.isText()) {
      style.setAlignment(HorizontalAlignment.LEFT);
      style.setIndention(INDENT);
    }
    return style;
  }

  private CellStyle total(Format format) {
    CellStyle style = data(format);
    style.setFont(bold(NORMAL_POINTS));
    style.setBorderBottom(BorderStyle.THIN);
    style.setBorderTop(BorderStyle.THIN);
    return style;
  }

  private CellStyle headerLook(HorizontalAlignment side) {
    XSSFCellStyle style = book.createCellStyle();
    XSSFFont font = bold(NORMAL_POINTS);
    font.setColor(IndexedColors.WHITE.getIndex());
    style.setFont(font);
    style.setFillForegroundColor(color(HEADER_FILL));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setVerticalAlignment(VerticalAlignment.BOTTOM);
    style.setAlignment(side);
    style.setIndention(side == HorizontalAlignment.LEFT ? INDENT : 0);
    style.setWrapText(true);
    return style;
  }

  private XSSFCellStyle fault() {
    XSSFCellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat(Format.TEXT.pattern()));
    style.setFillForegroundColor(color(FAULT_FILL));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setFont(bold(NORMAL_POINTS));
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setBorderTop(BorderStyle.MEDIUM);
    style.setBorderBottom(BorderStyle.MEDIUM);
    style.setBorderLeft(BorderStyle.MEDIUM);
    style.setBorderRight(BorderStyle.MEDIUM);
    return style;
  }

  private static CellStyle quoted(CellStyle style) {
    style.setQuotePrefixed(true);
    return style;
  }

  private static CellStyle wrapped(CellStyle style) {
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    return style;
  }

  private CellStyle withFont(XSSFFont font) {
    CellStyle style = book.createCellStyle();
    style.setFont(font);
    return style;
  }

  private XSSFFont bold(int points) {
    XSSFFont font = font(points);
    font.setBold(true);
    return font;
  }

  private XSSFFont gray() {
    XSSFFont font = font(NORMAL_POINTS);
    font.setColor(color(new byte[] {0x50, 0x50, 0x50}));
    return font;
  }

  private XSSFFont smallGray() {
    XSSFFont font = font(SMALL_POINTS);
    font.setColor(color(new byte[] {0x50, 0x50, 0x50}));
    return font;
  }

  private XSSFFont linkFont() {
    XSSFFont font = font(NORMAL_POINTS);
    font.setColor(color(LINK_BLUE));
    font.setUnderline(org.apache.poi.ss.usermodel.Font.U_SINGLE);
    return font;
  }

  private XSSFFont font(int points) {
    XSSFFont font = book.createFont();
    plainFont(font, points);
    return font;
  }

  private static void plainFont(XSSFFont font, int points) {
    font.setFontName(FONT);
    font.setScheme(FontScheme.NONE);
    font.setFontHeightInPoints((short) points);
  }

  private static XSSFColor color(byte[] rgb) {
    return new XSSFColor(rgb, new DefaultIndexedColorMap());
  }
}
