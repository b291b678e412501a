package pondtally.reports.document;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.text.Messages;

/**
 * The charts of a document: each where it is spoken of, but those that nearly fill a page at the
 * end, so that text fills the pages before them.
 */
final class Pictures {

  private final XWPFDocument document;
  private final Paragraphs paragraphs;
  private final Path folder;
  private final Map<ChartFile, String> tall = new LinkedHashMap<>();

  Pictures(XWPFDocument document, Paragraphs paragraphs, Path folder) {
    this.document = document;
    this.paragraphs = paragraphs;
    this.folder = folder;
  }

  void add(ChartFile chart, String caption) throws IOException {
    if (PictureWriter.isTall(folder, chart)) {
      tall.put(chart, caption);
      paragraphs.add("BodyText", Messages.of("document.tall", Map.of("title", chart.title())));
    } else {
      PictureWriter.write(document, paragraphs, folder, chart, caption);
    }
  }

  /** The charts kept back, below a heading of their own. */
  void writeTall() throws IOException {
    if (!tall.isEmpty()) {
      paragraphs.heading(1, Messages.of("document.tall.heading"));
    }
    for (ChartFile chart : tall.keySet()) {
      PictureWriter.write(document, paragraphs, folder, chart, tall.get(chart));
    }
  }
}
