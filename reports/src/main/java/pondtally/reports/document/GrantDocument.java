package pondtally.reports.document;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.wp.usermodel.HeaderFooterType;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Cautions;
import pondtally.reports.view.Grant;
import pondtally.reports.view.GrantSection;
import pondtally.reports.view.GrantTable;
import pondtally.reports.view.Method;
import pondtally.reports.view.Sentence;
import pondtally.reports.workbook.StableZip;

/** {@code grant.docx}: what goes into an application, to paste from. */
public final class GrantDocument {

  private GrantDocument() {}

  /**
   * Writes the document.
   *
   * @param tables all figures that it prints
   * @param chartsFolder where the charts' {@code .png} files are
   * @param charts the charts that were made; those that the document has a place for are shown
   * @param file the {@code .docx} file to write; the same tables and charts give the same bytes
   * @throws IOException when a chart cannot be read or the file cannot be written
   */
  public static void write(
      TablePackage tables, Path chartsFolder, List<ChartFile> charts, Path file)
      throws IOException {
    try (XWPFDocument document = Template.open()) {
      Paragraphs paragraphs = new Paragraphs(document);
      paragraphs.add("Title", Grant.title(tables));
      paragraphs.add("Subtitle", Grant.cut(tables));
      Map<String, ChartFile> byName =
          charts.stream().collect(Collectors.toMap(ChartFile::name, Function.identity()));
      Pictures pictures = new Pictures(document, paragraphs, chartsFolder);
      for (GrantSection section : Grant.of(tables)) {
        section(document, paragraphs, section);
        charts(pictures, section, byName);
      }
      cautions(paragraphs);
      methods(paragraphs, tables);
      pictures.writeTall();
      footer(document, tables);
      DocumentProperties.set(document, tables);
      StableZip.writeArchive(document::write, file);
    } catch (InvalidFormatException e) {
      throw new IOException("The document cannot be put together: " + e.getMessage(), e);
    }
  }

  private static void section(XWPFDocument document, Paragraphs paragraphs, GrantSection section) {
    paragraphs.heading(section.level(), section.heading());
    for (Sentence sentence : section.sentences()) {
      paragraphs.add("BodyText", sentence.text());
    }
    for (GrantTable table : section.tables()) {
      TableWriter.write(document, paragraphs, table);
    }
  }

  private static void charts(Pictures pictures, GrantSection section, Map<String, ChartFile> byName)
      throws IOException {
    for (Map.Entry<String, String> chart : section.charts().entrySet()) {
      ChartFile made = byName.get(chart.getKey());
      if (made != null) {
        boolean goesOn = byName.containsKey(chart.getKey() + "-2");
        String caption =
            chart.getValue()
                + (goesOn ? Messages.of("document.GrantDocument.more-groups-charts-folder") : "");
        pictures.add(made, caption);
      }
    }
  }

  private static void methods(Paragraphs paragraphs, TablePackage tables) {
    paragraphs.heading(1, Messages.of("document.GrantDocument.methods-in-short"));
    for (Method method : Method.all(tables)) {
      paragraphs.runIn(
          method.subject(),
          Messages.of(
              "document.GrantDocument.source",
              Map.of("method", method.text(), "source", method.source())));
    }
  }

  private static void cautions(Paragraphs paragraphs) {
    paragraphs.heading(1, Cautions.HEADING);
    Cautions.all().forEach(caution -> paragraphs.add("ListBullet", caution));
  }

  private static void footer(XWPFDocument document, TablePackage tables) {
    XWPFParagraph foot = document.createFooter(HeaderFooterType.DEFAULT).getParagraphArray(0);
    if (foot == null) {
      foot = document.createFooter(HeaderFooterType.DEFAULT).createParagraph();
    }
    foot.setStyle("Footer");
    Paragraphs.run(foot, Grant.foot(tables)).addTab();
    Paragraphs.run(foot, Messages.of("document.GrantDocument.page"));
    Paragraphs.field(foot, "PAGE", "1");
    Paragraphs.run(foot, Messages.of("common.of"));
    Paragraphs.field(foot, "NUMPAGES", "1");
  }
}
