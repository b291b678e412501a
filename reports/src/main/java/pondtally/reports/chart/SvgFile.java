package pondtally.reports.chart;

import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * A figure as scalable graphics with title and description for those who hear it. Ids begin with
 * the name of the figure, so that several fit into one page.
 */
final class SvgFile {

  private static final String SVG = "http://www.w3.org/2000/svg";

  private SvgFile() {}

  static void write(Figure figure, Path file) throws IOException {
    FigureDrawing drawing = new FigureDrawing(figure);
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
    context.setComment(null);
    context.setPrecision(3);
    context.setIDGenerator(new NamedIds(figure.name()));
    SvgCanvas canvas = new SvgCanvas(context);
    canvas.setSVGCanvasSize(
        new Dimension((int) FigureDrawing.WIDTH, (int) Math.round(drawing.height())));
    drawing.draw(canvas);
    Element root = canvas.getRoot();
    describe(root, figure, drawing.height());
    StringWriter text = new StringWriter();
    canvas.stream(root, text, false, false);
    Files.writeString(file, withoutDoctype(text.toString()), StandardCharsets.UTF_8);
  }

  /** No document type: it would point to another host, and could not stand inside a page. */
  private static String withoutDoctype(String svg) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg.substring(svg.indexOf("<svg"));
  }

  private static Document document() {
    try {
      return DocumentBuilderFactory.newDefaultNSInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new UncheckedIOException(new IOException(e));
    }
  }

  private static void describe(Element root, Figure figure, double height) {
    String name = figure.name();
    root.setAttribute("width", "6.5in");
    root.setAttribute("height", SvgCanvas.number(height / 72) + "in");
    root.setAttribute("viewBox", "0 0 468 " + SvgCanvas.number(height));
    root.setAttribute("role", "img");
    root.setAttribute("lang", "en");
    root.setAttribute("aria-labelledby", name + "-title " + name + "-desc");
    Node first = root.getFirstChild();
    root.insertBefore(element(root, "title", name + "-title", figure.title()), first);
    root.insertBefore(element(root, "desc", name + "-desc", figure.description()), first);
    families(root);
    ((Element) root.getElementsByTagName("defs").item(0)).removeAttribute("id");
  }

  private static Element element(Element root, String tag, String id, String text) {
    Element element = root.getOwnerDocument().createElementNS(SVG, tag);
    element.setAttribute("id", id);
    element.setTextContent(SvgCanvas.printable(text));
    return element;
  }

  private static void families(Element element) {
    if (element.hasAttribute("font-family")) {
      element.setAttribute("font-family", Lettering.FAMILIES);
    }
    NodeList children = element.getChildNodes();
    for (int i = 0; i < children.getLength(); i++) {
      if (children.item(i) instanceof Element child) {
        families(child);
      }
    }
  }

  /** Ids that no other figure uses. */
  private static final class NamedIds extends SVGIDGenerator {

    private final String name;

    NamedIds(String name) {
      this.name = name;
    }

    @Override
    public String generateID(String prefix) {
      return name + "-" + super.generateID(prefix);
    }
  }
}
