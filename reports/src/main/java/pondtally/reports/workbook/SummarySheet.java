package pondtally.reports.workbook;

import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Cautions;
import pondtally.reports.view.Section;
import pondtally.reports.view.Summary;

/** The first sheet: sentences, the way to the other sheets, the cautions. */
final class SummarySheet {

  private SummarySheet() {}

  /**
   * @param others names of the sheets to lead to, in their order
   */
  static ProseSheet of(TablePackage tables, List<String> others) {
    ProseSheet.Builder prose = new ProseSheet.Builder();
    for (Section section : Summary.of(tables)) {
      prose.section(section.heading());
      section.sentences().forEach(sentence -> prose.paragraph(sentence.text()));
    }
    prose.section(Messages.of("common.Sheets-of-this-workbook"));
    others.forEach(name -> prose.link(name, name));
    prose.section(Cautions.HEADING);
    Cautions.all().forEach(prose::paragraph);
    return prose.build(Messages.of("workbook.SummarySheet.summary"), Summary.title(tables));
  }
}
