package pondtally.reports.chart;

import java.awt.Color;
import java.awt.Font;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYDataset;
import pondtally.reports.chart.Panel.Frame;

/** What all plots have in common: white ground, light grid, quiet axes, fixed margins. */
final class Plots {

  /** Above the data area, so that the topmost number on the axis is whole. */
  static final double TOP_INSET = 5;

  /** Below the data area, for numbers alone and for numbers with a title. */
  static final double NUMBERS = 14;

  static final double NUMBERS_AND_TITLE = 28;

  private static final Font SMALL = Lettering.regular(Lettering.SMALL);

  private Plots() {}

  static XYPlot plot(ValueAxis domain, ValueAxis range) {
    XYPlot plot = new XYPlot(null, domain, range, null);
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setInsets(new RectangleInsets(TOP_INSET, 0, 0, 0));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinePaint(Look.GRID);
    plot.setRangeGridlineStroke(Look.THIN);
    plot.setDomainGridlinePaint(Look.GRID);
    plot.setDomainGridlineStroke(Look.THIN);
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
    return plot;
  }

  /** Adds a layer that is drawn over those before it. */
  static void layer(XYPlot plot, XYDataset dataset, XYItemRenderer renderer) {
    int number = plot.getRendererCount();
    if (plot.getRenderer(0) == null) {
      number = 0;
    }
    plot.setDataset(number, dataset);
    plot.setRenderer(number, renderer);
  }

  static NumberAxis axis(String title, Scale scale) {
    NumberAxis axis = new NumberAxis(title.isEmpty() ? null : title);
    axis.setRange(scale.lower(), scale.upper());
    axis.setTickUnit(new NumberTickUnit(scale.tick(), scale.format()));
    quiet(axis, title);
    return axis;
  }

  /** Small letters, thin lines. */
  static void quiet(ValueAxis axis, String title) {
    axis.setTickLabelFont(SMALL);
    axis.setTickLabelPaint(Look.INK);
    axis.setLabelFont(Lettering.able(SMALL, title));
    axis.setLabelPaint(Look.GRAY);
    axis.setLabelInsets(new RectangleInsets(1, 0, 0, 0));
    axis.setAxisLinePaint(Look.GRAY);
    axis.setAxisLineStroke(Look.THIN);
    axis.setTickMarkPaint(Look.GRAY);
    axis.setTickMarkStroke(Look.THIN);
    axis.setTickMarkInsideLength(0);
    axis.setTickMarkOutsideLength(2);
  }

  /** No line and no ticks: the grid is enough. */
  static NumberAxis bare(NumberAxis axis) {
    axis.setAxisLineVisible(false);
    axis.setTickMarksVisible(false);
    return axis;
  }

  /** A dashed line across the plot at a value of the horizontal axis. */
  static void referenceLine(XYPlot plot, double at) {
    plot.addDomainMarker(new ValueMarker(at, Look.GRAY, Look.line(0.9f, 3, 2)), Layer.BACKGROUND);
  }

  static JFreeChart chart(XYPlot plot, Frame frame) {
    AxisSpace sides = new AxisSpace();
    sides.setLeft(frame.left());
    sides.setRight(frame.right());
    plot.setFixedRangeAxisSpace(sides);
    AxisSpace bottom = new AxisSpace();
    bottom.setBottom(frame.bottom());
    plot.setFixedDomainAxisSpace(bottom);
    JFreeChart chart = new JFreeChart(null, null, plot, false);
    chart.setBackgroundPaint((Color) null);
    chart.setBorderVisible(false);
    chart.setAntiAlias(true);
    chart.setPadding(RectangleInsets.ZERO_INSETS);
    return chart;
  }
}
