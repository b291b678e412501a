package pondtally.reports.chart;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A figure as pixels, 300 to the inch, with that resolution and its title stated in the file. */
final class PngFile {

  private static final double DOTS_PER_INCH = 300;
  private static final double POINTS_PER_INCH = 72;
  private static final long DOTS_PER_METER = Math.round(DOTS_PER_INCH / 0.0254);
  private static final String FORMAT = "javax_imageio_png_1.0";

  private PngFile() {}

  static void write(Figure figure, Path file) throws IOException {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("png");
    ImageWriter writer = writers.next();
    BufferedImage image = image(figure);
    try (OutputStream bytes = Files.newOutputStream(file);
        ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(new IIOImage(image, null, metadata(writer, figure)));
    } finally {
      writer.dispose();
    }
  }

  private static BufferedImage image(Figure figure) {
    FigureDrawing drawing = new FigureDrawing(figure);
    double scale = DOTS_PER_INCH / POINTS_PER_INCH;
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(FigureDrawing.WIDTH * scale),
            (int) Math.round(drawing.height() * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(scale, scale);
    drawing.draw(g);
    g.dispose();
    return image;
  }

  private static IIOMetadata metadata(ImageWriter writer, Figure figure) throws IOException {
    IIOMetadata metadata =
        writer.getDefaultImageMetadata(
            ImageTypeSpecifier.createFromBufferedImageType(BufferedImage.TYPE_INT_RGB), null);
    IIOMetadataNode resolution = new IIOMetadataNode("pHYs");
    resolution.setAttribute("pixelsPerUnitXAxis", Long.toString(DOTS_PER_METER));
    resolution.setAttribute("pixelsPerUnitYAxis", Long.toString(DOTS_PER_METER));
    resolution.setAttribute("unitSpecifier", "meter");
    IIOMetadataNode texts = new IIOMetadataNode("iTXt");
    texts.appendChild(text("Title", figure.title()));
    texts.appendChild(text("Description", figure.description()));
    IIOMetadataNode root = new IIOMetadataNode(FORMAT);
    root.appendChild(resolution);
    root.appendChild(texts);
    metadata.mergeTree(FORMAT, root);
    return metadata;
  }

  private static IIOMetadataNode text(String keyword, String text) {
    IIOMetadataNode entry = new IIOMetadataNode("iTXtEntry");
    entry.setAttribute("keyword", keyword);
    entry.setAttribute("compressionFlag", "FALSE");
    entry.setAttribute("compressionMethod", "0");
    entry.setAttribute("languageTag", "en");
    entry.setAttribute("translatedKeyword", keyword);
    entry.setAttribute("text", text.replace("\0", "\uFFFD"));
    return entry;
  }
}
