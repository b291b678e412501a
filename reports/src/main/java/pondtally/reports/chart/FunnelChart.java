package pondtally.reports.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.chart.FunnelPoint.Place;
import pondtally.reports.chart.Panel.Frame;
import pondtally.reports.table.Row;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/**
 * Watersheds against what their pipes and ages let one expect (Spiegelhalter 2005). The tables give
 * limits at each watershed's own expected failures; the lines join those.
 */
final class FunnelChart {

  private static final String NAME = "watershed-funnel";
  private static final String NEUTRAL =
      Messages.of("chart.FunnelChart.failures-found-against-failures-expected-by");
  private static final Look INSIDE = new Look(Look.BLUE, Look.line(1), Look.circle(2.9));
  private static final Look SMALL = new Look(Look.BLUE, Look.line(1), Look.circle(2.9));
  private static final Look OUTSIDE = new Look(Look.VERMILLION, Look.line(1), Look.diamond(4));
  private static final Look WIDE = new Look(Look.INK, Look.line(0.9f), Look.square(0.9));
  private static final Look NARROW =
      new Look(Look.GRAY, Look.line(0.9f, 4, 2.5f), Look.square(0.9));

  private static final double HEIGHT = 230;
  private static final double LEFT = 30;
  private static final double RIGHT = 12;
  private static final double WIDTH = FigureDrawing.WIDTH - LEFT - RIGHT;

  /** Up to so many watersheds each limit is marked and each point named. */
  private static final int FEW = 15;

  private FunnelChart() {}

  static List<Figure> figures(ChartSource source) {
    List<Row> rows = source.wholeRecord("failure_rates", "watershed");
    if (rows.isEmpty()) {
      return List.of();
    }
    List<FunnelPoint> points =
        rows.stream()
            .flatMap(row -> FunnelPoint.of(row, source).stream())
            .sorted(Comparator.comparingDouble(FunnelPoint::expected))
            .toList();
    if (points.size() < 2) {
      return List.of(
          Figure.nothingToShow(
              NAME, NEUTRAL, source, Messages.of("chart.FunnelChart.no-funnel-is-drawn-it-needs")));
    }
    return List.of(figure(source, points, rows.size() - points.size()));
  }

  private static Figure figure(ChartSource source, List<FunnelPoint> points, int leftOut) {
    String title = title(points);
    return new Figure(
        NAME,
        title,
        List.of(NumberText.count(points.size(), "watersheds") + ". " + source.cut()),
        key(points, source),
        List.of(panel(points)),
        1,
        foot(source, leftOut),
        title + ". " + description(points));
  }

  private static Panel panel(List<FunnelPoint> points) {
    double mostExpected = points.get(points.size() - 1).expected();
    Scale across = Scale.to(mostExpected * 1.02, 6, "#,##0.###").padded(5, WIDTH);
    Scale up = Scale.upTo(0, mostShown(points), 5, "0.##").padded(5, HEIGHT);
    XYPlot plot =
        Plots.plot(
            Plots.axis(
                Messages.of("chart.FunnelChart.failures-expected-from-pipe-types-and"), across),
            Plots.bare(Plots.axis("", up)));
    plot.addRangeMarker(new ValueMarker(1, Look.GRAY, Look.line(0.9f, 3, 2)), Layer.BACKGROUND);
    addLimits(plot, points);
    addPoints(plot, points);
    Frame frame = new Frame(LEFT, RIGHT, Plots.NUMBERS_AND_TITLE, HEIGHT);
    return new Panel(
        "",
        Messages.of("chart.FunnelChart.failures-found-as-a-multiple-of"),
        Plots.chart(plot, frame),
        frame,
        List.of(new FunnelNames(points, points.size() <= FEW, across, up)));
  }

  private static double mostShown(List<FunnelPoint> points) {
    double ratio = points.stream().mapToDouble(FunnelPoint::ratio).max().orElse(1);
    double limits =
        points.stream()
            .mapToDouble(FunnelPoint::upper)
            .sorted()
            .skip(points.size() / 4)
            .max()
            .orElse(2);
    return Math.max(ratio * 1.08, Math.min(limits, 4));
  }

  private static void addLimits(XYPlot plot, List<FunnelPoint> points) {
    XYSeriesCollection data = new XYSeriesCollection();
    XYSeries lower = new XYSeries(Messages.of("chart.FunnelChart.lower-99-8-limit"));
    XYSeries upper = new XYSeries(Messages.of("chart.FunnelChart.upper-99-8-limit"));
    XYSeries lower95 = new XYSeries(Messages.of("chart.FunnelChart.lower-95-limit"));
    XYSeries upper95 = new XYSeries(Messages.of("chart.FunnelChart.upper-95-limit"));
    for (FunnelPoint point : points) {
      lower.add(point.expected(), point.lower());
      upper.add(point.expected(), point.upper());
      point.lower95().ifPresent(limit -> lower95.add(point.expected(), limit));
      point.upper95().ifPresent(limit -> upper95.add(point.expected(), limit));
    }
    List.of(lower, upper, lower95, upper95).forEach(data::addSeries);
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, points.size() <= FEW);
    for (int i = 0; i < 4; i++) {
      Look look = i < 2 ? WIDE : NARROW;
      renderer.setSeriesPaint(i, look.color());
      renderer.setSeriesStroke(i, look.line());
      renderer.setSeriesShape(i, look.mark());
    }
    Plots.layer(plot, data, renderer);
  }

  private static void addPoints(XYPlot plot, List<FunnelPoint> points) {
    XYSeriesCollection data = new XYSeriesCollection();
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    renderer.setUseFillPaint(true);
    renderer.setUseOutlinePaint(true);
    for (Place place : Place.values()) {
      XYSeries series = new XYSeries(place.name());
      points.stream()
          .filter(point -> point.place() == place)
          .forEach(point -> series.add(point.expected(), point.ratio()));
      Look look = look(place);
      int number = data.getSeriesCount();
      renderer.setSeriesShape(number, look.mark());
      renderer.setSeriesPaint(number, look.color());
      renderer.setSeriesOutlinePaint(number, look.color());
      renderer.setSeriesFillPaint(number, place == Place.SMALL ? Color.WHITE : look.color());
      data.addSeries(series);
    }
    Plots.layer(plot, data, renderer);
  }

  private static Look look(Place place) {
    return switch (place) {
      case INSIDE -> INSIDE;
      case SMALL -> SMALL;
      case OUTSIDE -> OUTSIDE;
    };
  }

  private static List<KeyEntry> key(List<FunnelPoint> points, ChartSource source) {
    List<KeyEntry> key = new ArrayList<>();
    key.add(
        new KeyEntry(
            INSIDE, Sample.MARK, Messages.of("chart.FunnelChart.watershed-within-the-limits")));
    if (points.stream().anyMatch(point -> point.place() == Place.OUTSIDE)) {
      key.add(
          new KeyEntry(
              OUTSIDE, Sample.MARK, Messages.of("chart.FunnelChart.outside-the-99-8-limits")));
    }
    if (points.stream().anyMatch(point -> point.place() == Place.SMALL)) {
      String label =
          Messages.of(
              "chart.FunnelChart.fewer-than-devices",
              Map.of("groupsBelow", String.valueOf(source.groupsBelow())));
      key.add(new KeyEntry(SMALL, Sample.HOLLOW_MARK, label));
    }
    key.add(new KeyEntry(WIDE, Sample.LINE, "99.8% limits"));
    if (points.stream().anyMatch(point -> point.upper95().isPresent())) {
      key.add(new KeyEntry(NARROW, Sample.LINE, "95% limits"));
    }
    return key;
  }

  private static String title(List<FunnelPoint> points) {
    List<FunnelPoint> outside =
        points.stream().filter(point -> point.place() == Place.OUTSIDE).toList();
    if (outside.isEmpty()) {
      return Messages.of("chart.FunnelChart.no-watershed-lies-outside-the-range");
    }
    String names =
        outside.size() > 3
            ? ""
            : ": "
                + outside.stream()
                    .map(
                        point ->
                            point.label()
                                + (point.ratio() > 1
                                    ? Messages.of("chart.FunnelChart.more-failures")
                                    : Messages.of("chart.FunnelChart.fewer-failures")))
                    .collect(Collectors.joining(", "));
    return Messages.of(
        "chart.FunnelChart.of-outside-the-range-of-chance",
        Map.of(
            "size",
            NumberText.count(outside.size()),
            "watersheds",
            NumberText.count(points.size(), "watersheds"),
            "part",
            String.valueOf(
                outside.size() == 1
                    ? Messages.of("chart.FunnelChart.lies")
                    : Messages.of("chart.FunnelChart.lie")),
            "names",
            names));
  }

  private static List<String> foot(ChartSource source, int leftOut) {
    List<String> foot = new ArrayList<>();
    foot.add(
        Messages.of(
            "chart.FunnelChart.expected-the-pooled-failure-rate-by",
            Map.of("failureDefinition", source.failureDefinition())));
    foot.add(Messages.of("chart.FunnelChart.one-watershed-in-500-lies-outside"));
    if (leftOut > 0) {
      foot.add(
          Messages.of(
              "chart.FunnelChart.not-drawn-because-withheld-or-without",
              Map.of("watersheds", NumberText.count(leftOut, "watersheds"))));
    }
    return foot;
  }

  private static String description(List<FunnelPoint> points) {
    return Messages.of(
        "chart.FunnelChart.a-funnel-plot-failures-found-over",
        Map.of(
            "joining",
            points.stream()
                .sorted(Comparator.comparing(FunnelPoint::label))
                .limit(12)
                .map(
                    point ->
                        Messages.of(
                            "chart.FunnelChart.times-expected",
                            Map.of(
                                "point",
                                point.label(),
                                "ratio",
                                NumberText.ratio(point.ratio()),
                                "rate",
                                NumberText.rate(point.expected()))))
                .collect(Collectors.joining("; "))));
  }
}
