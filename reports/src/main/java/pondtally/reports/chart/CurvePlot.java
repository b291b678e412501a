package pondtally.reports.chart;

import java.awt.Color;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationStepRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import pondtally.reports.chart.StepCurve.Step;

/** Step curves in one plot: others in gray below, then bands, lines and marks. */
final class CurvePlot {

  private static final float BAND_ALPHA = 0.18f;

  /** Steps closer than one in so many of the axis cannot be told apart in print. */
  private static final double POINTS = 600;

  private final XYPlot plot;
  private final double start;
  private final List<Double> markedYears;
  private final double resolution;

  /**
   * @param start what every curve says at age 0
   * @param markedYears ages at which curves carry their mark
   */
  CurvePlot(XYPlot plot, double start, List<Double> markedYears) {
    this.plot = plot;
    this.start = start;
    this.markedYears = markedYears;
    this.resolution = plot.getDomainAxis().getRange().getLength() / POINTS;
  }

  /** Curves in gray, without limits. */
  CurvePlot context(List<StepCurve> curves) {
    if (curves.isEmpty()) {
      return this;
    }
    XYSeriesCollection lines = new XYSeriesCollection();
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true);
    for (StepCurve curve : curves) {
      XYSeries series = new XYSeries(curve.group(), false, true);
      double value = start;
      series.add(0, value);
      for (Step step : curve.drawn(2 * resolution)) {
        series.add(step.years(), value);
        value = step.value();
        series.add(step.years(), value);
      }
      series.add(end(curve), value);
      renderer.setSeriesPaint(lines.getSeriesCount(), Look.CONTEXT);
      renderer.setSeriesStroke(lines.getSeriesCount(), Look.line(0.8f));
      lines.addSeries(series);
    }
    Plots.layer(plot, lines, renderer);
    return this;
  }

  /** Curves with their limits, each in its own look. */
  CurvePlot curves(List<StepCurve> curves, List<Look> looks) {
    YIntervalSeriesCollection bands = new YIntervalSeriesCollection();
    DeviationStepRenderer renderer = new DeviationStepRenderer(true, false);
    renderer.setAlpha(BAND_ALPHA);
    for (int i = 0; i < curves.size(); i++) {
      bands.addSeries(band(curves.get(i)));
      renderer.setSeriesPaint(i, looks.get(i).color());
      renderer.setSeriesFillPaint(i, looks.get(i).color());
      renderer.setSeriesStroke(i, looks.get(i).line());
    }
    Plots.layer(plot, bands, renderer);
    marks(curves, looks);
    return this;
  }

  private YIntervalSeries band(StepCurve curve) {
    YIntervalSeries series = new YIntervalSeries(curve.group(), false, true);
    series.add(0, start, start, start);
    curve.drawn(resolution).forEach(step -> add(series, step.years(), step));
    curve.at(end(curve)).ifPresent(last -> add(series, end(curve), last));
    return series;
  }

  private static void add(YIntervalSeries series, double years, Step step) {
    double value = step.value();
    series.add(years, value, step.lower().orElse(value), step.upper().orElse(value));
  }

  private void marks(List<StepCurve> curves, List<Look> looks) {
    XYSeriesCollection marks = new XYSeriesCollection();
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    for (int i = 0; i < curves.size(); i++) {
      marks.addSeries(markSeries(curves.get(i)));
      renderer.setSeriesShape(i, looks.get(i).mark());
      renderer.setSeriesPaint(i, looks.get(i).color());
    }
    renderer.setUseOutlinePaint(true);
    renderer.setDefaultOutlinePaint(Color.WHITE);
    renderer.setDefaultOutlineStroke(Look.line(0.5f));
    Plots.layer(plot, marks, renderer);
  }

  private XYSeries markSeries(StepCurve curve) {
    XYSeries series = new XYSeries(curve.group());
    for (double year : markedYears) {
      if (year <= end(curve)) {
        series.add(year, curve.at(year).map(Step::value).orElse(start));
      }
    }
    return series;
  }

  private static double end(StepCurve curve) {
    return curve.supportedYears().orElse(-1);
  }
}
