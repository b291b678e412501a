package pondtally.reports.workbook;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pondtally.reports.text.Messages;

/**
 * Document properties and page set-up.
 *
 * @param asOf data cut; stands for the day the file was made, so that the clock does not get in
 * @param footer what stands at the foot of each page, without the page number
 */
public record BookProperties(String title, String subject, LocalDate asOf, String footer) {

  private static final String PROGRAM = "Pondtally";
  private static final double SIDE_MARGIN_INCHES = 0.5;

  /** Sets the properties of the document. */
  public void set(XSSFWorkbook book) {
    POIXMLProperties properties = book.getProperties();
    POIXMLProperties.CoreProperties core = properties.getCoreProperties();
    core.setTitle(SafeText.encoded(title));
    core.setSubjectProperty(SafeText.encoded(subject));
    core.setCreator(PROGRAM);
    core.setLastModifiedByUser(PROGRAM);
    Date day = Date.from(asOf.atStartOfDay(ZoneOffset.UTC).toInstant());
    core.setCreated(Optional.of(day));
    core.setModified(Optional.of(day));
    properties.getExtendedProperties().getUnderlyingProperties().setApplication(PROGRAM);
  }

  /**
   * Sets up printing: as wide as the page, with a footer.
   *
   * @param onePage also as high as the page, so that a chart is not cut
   */
  public void page(XSSFSheet sheet, boolean landscape, boolean onePage) {
    page(sheet, landscape, 1, onePage ? 1 : 0);
  }

  /**
   * Sets up printing on several pages, with a footer.
   *
   * @param wide pages side by side; one for all that can be read at the width of a page
   * @param high pages below each other that it may take; 0 for as many as it needs
   */
  void page(XSSFSheet sheet, boolean landscape, int wide, int high) {
    PrintSetup print = sheet.getPrintSetup();
    print.setPaperSize(PrintSetup.LETTER_PAPERSIZE);
    print.setLandscape(landscape);
    sheet.setFitToPage(true);
    print.setFitWidth((short) wide);
    print.setFitHeight((short) high);
    // Otherwise some programs take the printer's own scale.
    sheet.getCTWorksheet().getPageSetup().setUsePrinterDefaults(false);
    sheet.setMargin(PageMargin.LEFT, SIDE_MARGIN_INCHES);
    sheet.setMargin(PageMargin.RIGHT, SIDE_MARGIN_INCHES);
    sheet.getFooter().setLeft(SafeText.encoded(footer).replace("&", "&&"));
    sheet.getFooter().setRight(Messages.of("workbook.BookProperties.page"));
  }
}
