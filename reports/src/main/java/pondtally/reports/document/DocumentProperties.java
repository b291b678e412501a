package pondtally.reports.document;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Grant;
import pondtally.reports.workbook.SafeText;

/** Title, subject, language and dates of the document; the data cut stands for the clock. */
final class DocumentProperties {

  private static final String PROGRAM = "Pondtally";
  private static final LocalDate NO_DATE = LocalDate.of(2000, 1, 1);

  private DocumentProperties() {}

  static void set(XWPFDocument document, TablePackage tables) throws InvalidFormatException {
    POIXMLProperties properties = document.getProperties();
    POIXMLProperties.CoreProperties core = properties.getCoreProperties();
    core.setTitle(SafeText.visible(Grant.title(tables)));
    core.setSubjectProperty(SafeText.visible(Grant.cut(tables)));
    core.setCreator(PROGRAM);
    core.setLastModifiedByUser(PROGRAM);
    String asOf = tables.fact("as_of");
    LocalDate cut = asOf.isEmpty() ? NO_DATE : LocalDate.parse(asOf);
    Optional<Date> day = Optional.of(Date.from(cut.atStartOfDay(ZoneOffset.UTC).toInstant()));
    core.setCreated(day);
    core.setModified(day);
    document.getPackage().getPackageProperties().setLanguageProperty("en-US");
    properties.getExtendedProperties().getUnderlyingProperties().setApplication(PROGRAM);
  }
}
