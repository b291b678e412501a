package pondtally.reports.page;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import pondtally.reports.text.GroupText;

/** The drawing of a map: marks, a grid of degrees, a scale bar in miles and kilometers. */
final class MapDrawing {

  private static final double WIDTH = 640;
  private static final double LEAST_HEIGHT = 260;
  private static final double MOST_HEIGHT = 560;
  private static final double LEFT = 62;
  private static final double BOTTOM = 62;
  private static final double EDGE = 10;
  private static final double KM_PER_MILE = 1.609344;
  private static final double[] STEPS = {
    0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000
  };

  /** With more sites than this, marks are drawn smaller and without names. */
  private static final int CROWDED = 600;

  private final SitePlaces places;
  private final double perDegree;
  private final double height;

  MapDrawing(SitePlaces places) {
    this.places = places;
    double across = (places.east() - places.west()) * places.shrink();
    double up = places.north() - places.south();
    double plotWidth = WIDTH - LEFT - EDGE;
    double most = MOST_HEIGHT - BOTTOM - EDGE;
    perDegree = Math.min(plotWidth / across, most / up);
    height = Math.max(LEAST_HEIGHT, up * perDegree + BOTTOM + EDGE);
  }

  void write(Html html, String title, String description) {
    html.open("div", "class", "scroll", "tabindex", "0", "role", "group", "aria-label", title);
    html.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        "0 0 640 " + number(height),
        "role",
        "img",
        "aria-labelledby",
        "sites-map-title sites-map-desc");
    html.element("title", title, "id", "sites-map-title");
    html.element("desc", description, "id", "sites-map-desc");
    grid(html);
    marks(html);
    bar(html);
    html.close().close();
  }

  private void grid(Html html) {
    html.open("g", "stroke", "#d9dedb", "stroke-width", "1", "font-size", "11", "fill", "#555a57");
    for (double latitude : lines(south(), north())) {
      double y = y(latitude);
      line(html, LEFT, y, WIDTH - EDGE, y);
      label(html, degrees(latitude, "N", "S"), LEFT - 6, y + 4, "end");
    }
    for (double longitude : lines(west(), east())) {
      double x = x(longitude);
      line(html, x, EDGE, x, height - BOTTOM);
      label(html, degrees(longitude, "E", "W"), x, height - BOTTOM + 15, "middle");
    }
    html.close();
  }

  private void marks(Html html) {
    boolean crowded = places.places().size() > CROWDED;
    String size = crowded ? " scale(0.6)" : "";
    List<SitePlaces.Place> order =
        places.places().stream()
            .sorted(
                Comparator.comparing((SitePlaces.Place p) -> SiteMark.of(p.state()))
                    .reversed()
                    .thenComparing(SitePlaces.Place::site))
            .toList();
    for (SitePlaces.Place place : order) {
      String at = number(x(place.longitude())) + " " + number(y(place.latitude()));
      html.line();
      SiteMark.of(place.state()).draw(html, "transform", "translate(" + at + ")" + size);
      if (!crowded) {
        html.element("title", place.site() + ": " + GroupText.words(place.state()));
      }
      html.close();
    }
  }

  /** Two bars, one in miles and one in kilometers, about a fifth of the map long. */
  private void bar(Html html) {
    double pixelsPerKm = perDegree / SitePlaces.KM_PER_DEGREE;
    html.open(
        "g", "stroke", "#222222", "stroke-width", "1.5", "font-size", "11", "fill", "#222222");
    bar(html, height - 24, pixelsPerKm * KM_PER_MILE, "mi");
    bar(html, height - 8, pixelsPerKm, "km");
    html.close();
  }

  private static void bar(Html html, double y, double pixelsPerUnit, String unit) {
    double length = STEPS[0];
    for (double step : STEPS) {
      if (step * pixelsPerUnit <= WIDTH / 4) {
        length = step;
      }
    }
    double end = LEFT + length * pixelsPerUnit;
    line(html, LEFT, y, end, y);
    line(html, LEFT, y - 3, LEFT, y + 3);
    line(html, end, y - 3, end, y + 3);
    label(html, plain(length) + " " + unit, end + 6, y + 4, "start");
  }

  private double west() {
    return places.west() - (WIDTH - LEFT - EDGE - width()) / 2 / perDegree / places.shrink();
  }

  private double east() {
    return west() + (WIDTH - LEFT - EDGE) / perDegree / places.shrink();
  }

  private double north() {
    double spare = height - BOTTOM - EDGE - (places.north() - places.south()) * perDegree;
    return places.north() + spare / 2 / perDegree;
  }

  private double south() {
    return north() - (height - BOTTOM - EDGE) / perDegree;
  }

  private double width() {
    return (places.east() - places.west()) * places.shrink() * perDegree;
  }

  private double x(double longitude) {
    return LEFT + (longitude - west()) * places.shrink() * perDegree;
  }

  private double y(double latitude) {
    return EDGE + (north() - latitude) * perDegree;
  }

  /** Round degrees between two others, at most six. */
  private static double[] lines(double from, double to) {
    double step = STEPS[0];
    for (int i = 0; i < STEPS.length && (to - from) / step > 6; i++) {
      step = STEPS[i];
    }
    long first = (long) Math.ceil(from / step);
    long last = (long) Math.floor(to / step);
    double[] lines = new double[(int) Math.max(0, last - first + 1)];
    for (int i = 0; i < lines.length; i++) {
      lines[i] = Math.round((first + i) * step * 1e6) / 1e6;
    }
    return lines;
  }

  private static String degrees(double value, String positive, String negative) {
    double around = value > 180 ? value - 360 : value;
    return plain(Math.abs(around)) + "\u00b0\u00a0" + (around < 0 ? negative : positive);
  }

  private static void line(Html html, double x1, double y1, double x2, double y2) {
    html.open(
            "path", "d", "M" + number(x1) + " " + number(y1) + "L" + number(x2) + " " + number(y2))
        .close();
  }

  private static void label(Html html, String text, double x, double y, String anchor) {
    html.element(
        "text", text, "x", number(x), "y", number(y), "text-anchor", anchor, "stroke", "none");
  }

  private static String plain(double value) {
    return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  private static String number(double value) {
    return plain(Double.parseDouble(String.format(Locale.ROOT, "%.2f", value)));
  }
}
