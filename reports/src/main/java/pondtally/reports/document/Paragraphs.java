package pondtally.reports.document;

import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSimpleField;
import pondtally.reports.text.Messages;
import pondtally.reports.workbook.SafeText;

/**
 * Paragraphs in the styles of the template. Text is always text: only {@link #field} makes a field,
 * and only from our own instructions.
 */
final class Paragraphs {

  private final XWPFDocument document;
  private int tables;
  private int figures;

  Paragraphs(XWPFDocument document) {
    this.document = document;
  }

  /** Adds a paragraph of one style. */
  XWPFParagraph add(String style, String text) {
    XWPFParagraph paragraph = document.createParagraph();
    paragraph.setStyle(style);
    run(paragraph, text);
    return paragraph;
  }

  /** A heading; level 1 stands below the title. */
  void heading(int level, String text) {
    add("Heading" + level, text);
  }

  /** A paragraph that opens with its subject in bold. */
  void runIn(String subject, String text) {
    XWPFParagraph paragraph = document.createParagraph();
    paragraph.setStyle("BodyText");
    run(paragraph, subject + Messages.of("document.Paragraphs.after-subject")).setStyle("Strong");
    run(paragraph, text);
  }

  /** The caption above a table, numbered by a field that knows its number already. */
  void tableCaption(String text) {
    caption("TableCaption", "Table", Messages.of("document.Paragraphs.table"), ++tables, text);
  }

  /** The caption below a picture. */
  void figureCaption(String text) {
    caption("Caption", "Figure", Messages.of("document.Paragraphs.figure"), ++figures, text);
  }

  /** Number of the picture that is captioned next. */
  int nextFigure() {
    return figures + 1;
  }

  private void caption(String style, String sequence, String label, int number, String text) {
    XWPFParagraph paragraph = add(style, label + "\u00a0");
    field(paragraph, "SEQ " + sequence + " \\* ARABIC", Integer.toString(number));
    run(paragraph, ". " + text);
  }

  /** A field with the result that it has now. */
  static void field(XWPFParagraph paragraph, String instruction, String result) {
    CTSimpleField field = paragraph.getCTP().addNewFldSimple();
    field.setInstr(instruction);
    field.addNewR().addNewT().setStringValue(result);
  }

  /** Adds words to a paragraph. */
  static XWPFRun run(XWPFParagraph paragraph, String text) {
    XWPFRun run = paragraph.createRun();
    String[] lines = SafeText.visible(text).split("\r\n|\r|\n", -1);
    for (int i = 0; i < lines.length; i++) {
      if (i > 0) {
        run.addBreak();
      }
      run.setText(lines[i]);
    }
    return run;
  }
}
