package pondtally.reports.chart;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.chart.RowWords.Room;
import pondtally.reports.text.Messages;

/**
 * A mark and an interval for each row. Marks of few devices are hollow; an interval that leaves the
 * axis ends in an arrow, and its figures stand beside it.
 */
final class IntervalPlot {

  static final Look FULL = new Look(Look.BLUE, Look.line(1.3f), Look.circle(2.9));
  static final Look SMALL = new Look(Look.VERMILLION, Look.line(1.1f, 3, 2), Look.square(2.6));

  private final ValueAxis axis;
  private final OptionalDouble reference;
  private final List<String> heads;
  private final Room room;

  /**
   * @param axis of the values
   * @param reference value of a dashed line; empty for none
   * @param heads of the columns of figures
   * @param room for names and figures
   */
  IntervalPlot(ValueAxis axis, OptionalDouble reference, List<String> heads, Room room) {
    this.axis = axis;
    this.reference = reference;
    this.heads = heads;
    this.room = room;
  }

  /** Room for all of these rows, so that parts of a chart have the same margins. */
  static Room room(List<String> heads, List<IntervalRow> rows) {
    return Room.of(
        rows.stream().map(IntervalRow::name).toList(),
        heads,
        rows.stream().map(IntervalRow::cells).toList());
  }

  /** The axis of a scale, padded for marks at its ends. */
  static NumberAxis axis(String title, Scale scale, Room room) {
    return Plots.axis(title, scale.padded(4, room.data()));
  }

  Panel panel(String heading, List<IntervalRow> rows) {
    XYPlot plot = RowPlot.plot(axis, rows.stream().map(IntervalRow::name).toList());
    reference.ifPresent(at -> Plots.referenceLine(plot, at));
    add(plot, rows, false, FULL);
    add(plot, rows, true, SMALL);
    addArrows(plot, rows);
    RowWords words =
        new RowWords(
            rows.stream().map(IntervalRow::name).toList(),
            heads,
            rows.stream().map(IntervalRow::cells).toList(),
            rows.stream().map(row -> row.value().isPresent() ? "" : row.instead()).toList(),
            room);
    return RowPlot.panel(heading, plot, words);
  }

  /** The upper end of an axis that shows the marks well and lets only very long intervals leave. */
  static double most(List<IntervalRow> rows) {
    double value = values(rows).max().orElse(0);
    double upper =
        rows.stream()
            .filter(row -> row.value().isPresent() && !row.isSmall())
            .mapToDouble(row -> row.upper().orElse(0))
            .max()
            .orElse(rows.stream().mapToDouble(row -> row.upper().orElse(0)).max().orElse(1));
    return value > 0 ? Math.max(1.1 * value, Math.min(upper, 3 * value)) : upper;
  }

  /** Below 0 where a value or limit is. */
  static double least(List<IntervalRow> rows) {
    return Math.min(
        values(rows).min().orElse(0),
        rows.stream().mapToDouble(row -> row.lower().orElse(0)).min().orElse(0));
  }

  /** What full and hollow marks mean, as far as they occur. */
  static List<KeyEntry> key(List<IntervalRow> rows, String full, String small) {
    List<KeyEntry> key = new ArrayList<>();
    if (rows.stream().anyMatch(row -> !row.isSmall() && row.value().isPresent())) {
      key.add(new KeyEntry(FULL, Sample.LINE_AND_MARK, full));
    }
    if (rows.stream().anyMatch(row -> row.isSmall() && row.value().isPresent())) {
      key.add(new KeyEntry(SMALL, Sample.HOLLOW_MARK, small));
    }
    return key;
  }

  private static DoubleStream values(List<IntervalRow> rows) {
    return rows.stream().flatMapToDouble(row -> row.value().stream());
  }

  private void add(XYPlot plot, List<IntervalRow> rows, boolean small, Look look) {
    XYIntervalSeries series =
        new XYIntervalSeries(
            small ? Messages.of("chart.IntervalPlot.few-devices") : "groups", false, true);
    for (int i = 0; i < rows.size(); i++) {
      IntervalRow row = rows.get(i);
      if (row.isSmall() == small && row.value().isPresent()) {
        double value = row.value().getAsDouble();
        series.add(value, row.lower().orElse(value), row.upper().orElse(value), i, i, i);
      }
    }
    XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
    data.addSeries(series);
    Plots.layer(plot, data, renderer(look, small));
  }

  private static XYErrorRenderer renderer(Look look, boolean hollow) {
    XYErrorRenderer renderer = new XYErrorRenderer();
    renderer.setDrawYError(false);
    renderer.setCapLength(0);
    renderer.setErrorPaint(look.color());
    renderer.setErrorStroke(look.line());
    renderer.setSeriesShape(0, look.mark());
    renderer.setSeriesPaint(0, look.color());
    renderer.setUseFillPaint(true);
    renderer.setSeriesFillPaint(0, hollow ? Color.WHITE : look.color());
    renderer.setDrawOutlines(true);
    renderer.setSeriesStroke(0, Look.line(1));
    return renderer;
  }

  private void addArrows(XYPlot plot, List<IntervalRow> rows) {
    XYSeries right = new XYSeries(Messages.of("chart.IntervalPlot.goes-on-to-the-right"));
    XYSeries left = new XYSeries(Messages.of("chart.IntervalPlot.goes-on-to-the-left"));
    for (int i = 0; i < rows.size(); i++) {
      IntervalRow row = rows.get(i);
      if (row.value().isPresent() && row.upper().orElse(0) > axis.getUpperBound()) {
        right.add(axis.getUpperBound(), i);
      }
      if (row.value().isPresent() && row.lower().orElse(0) < axis.getLowerBound()) {
        left.add(axis.getLowerBound(), i);
      }
    }
    XYSeriesCollection data = new XYSeriesCollection();
    Stream.of(right, left).forEach(data::addSeries);
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    Shape arrow = Look.arrow(3);
    renderer.setSeriesShape(0, arrow);
    renderer.setSeriesShape(
        1, AffineTransform.getScaleInstance(-1, 1).createTransformedShape(arrow));
    renderer.setSeriesPaint(0, Look.INK);
    renderer.setSeriesPaint(1, Look.INK);
    Plots.layer(plot, data, renderer);
  }
}
