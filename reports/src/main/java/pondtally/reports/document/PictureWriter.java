package pondtally.reports.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.apache.poi.common.usermodel.PictureType;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.util.Units;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFPicture;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.text.Messages;
import pondtally.reports.workbook.SafeText;

/** Charts as pictures in the text, each with its alternative text and title. */
final class PictureWriter {

  private static final double WIDEST_INCHES = 6.5;
  private static final double HIGHEST_INCHES = 8.0;

  /** A higher picture leaves a page half empty before it. */
  private static final double TALL_INCHES = 5.2;

  private PictureWriter() {}

  /** Whether the chart stands better on a page of its own. */
  static boolean isTall(Path folder, ChartFile chart) {
    return inches(folder.resolve(chart.name() + ".png"))[1] > TALL_INCHES;
  }

  /** Adds the chart and its caption. */
  static void write(
      XWPFDocument document, Paragraphs paragraphs, Path folder, ChartFile chart, String caption)
      throws IOException {
    Path file = folder.resolve(chart.name() + ".png");
    double[] inches = inches(file);
    XWPFParagraph paragraph = paragraphs.add("Figure", "");
    String name =
        Messages.of(
            "document.PictureWriter.figure",
            Map.of("nextFigure", String.valueOf(paragraphs.nextFigure())));
    try (InputStream in = Files.newInputStream(file)) {
      XWPFPicture picture =
          paragraph
              .getRuns()
              .get(0)
              .addPicture(
                  in,
                  PictureType.PNG,
                  chart.name() + ".png",
                  Units.toEMU(inches[0] * Units.POINT_DPI),
                  Units.toEMU(inches[1] * Units.POINT_DPI));
      describe(
          paragraph.getRuns().get(0).getCTR().getDrawingArray(0).getInlineArray(0).getDocPr(),
          name,
          chart);
      describe(picture.getCTPicture().getNvPicPr().getCNvPr(), name, chart);
    } catch (InvalidFormatException e) {
      throw new IOException(file + " is no picture: " + e.getMessage(), e);
    }
    paragraphs.figureCaption(caption);
  }

  private static void describe(CTNonVisualDrawingProps properties, String name, ChartFile chart) {
    properties.setName(name);
    properties.setTitle(SafeText.visible(chart.title()));
    properties.setDescr(SafeText.visible(chart.description()));
  }

  /** Width and height on paper: as wide as the text unless that makes it too high for a page. */
  private static double[] inches(Path file) {
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      ImageReader reader = readers.next();
      reader.setInput(in);
      double ratio = (double) reader.getHeight(0) / reader.getWidth(0);
      reader.dispose();
      double width = Math.min(WIDEST_INCHES, HIGHEST_INCHES / ratio);
      return new double[] {width, width * ratio};
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
