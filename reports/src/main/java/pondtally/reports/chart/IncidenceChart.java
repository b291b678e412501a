package pondtally.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationStepRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.chart.Panel.Frame;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** Share failed by cause and share retired, by age, stacked: the whole height is all that ended. */
final class IncidenceChart {

  private static final String NAME = "cumulative-incidence";
  private static final String NEUTRAL =
      Messages.of("chart.IncidenceChart.what-ends-the-service-of-a");

  private static final double HEIGHT = 190;
  private static final double LEFT = 34;
  private static final double RIGHT = 12;
  private static final double WIDTH = FigureDrawing.WIDTH - LEFT - RIGHT;

  private IncidenceChart() {}

  static List<Figure> figures(ChartSource source) {
    List<StepCurve> causes = IncidenceBands.causes(source);
    if (causes.isEmpty()) {
      return List.of();
    }
    double end = causes.stream().mapToDouble(c -> c.supportedYears().orElse(0)).max().orElse(0);
    IncidenceBands bands = IncidenceBands.of(causes, end, end / 600);
    if (end == 0 || bands.top(end) == 0) {
      return List.of(
          Figure.nothingToShow(
              NAME,
              NEUTRAL,
              source,
              Messages.of("chart.IncidenceChart.nothing-is-drawn-no-failure-or")));
    }
    return List.of(figure(source, bands, end));
  }

  private static Figure figure(ChartSource source, IncidenceBands bands, double end) {
    Scale years = Scale.years(end, 36.0 / WIDTH).padded(4, WIDTH);
    double shown = Math.floor(end / years.tick() + 1e-9) * years.tick();
    double at = shown > 0 ? shown : end;
    List<String> labels = bands.labelsAt(at);
    List<KeyEntry> key = new ArrayList<>();
    for (int i = 0; i < bands.names().size(); i++) {
      key.add(new KeyEntry(bands.look(i), Sample.LINE_AND_MARK, labels.get(i)));
    }
    String title =
        Messages.of(
            "chart.IncidenceChart.after-devices-had-failed-or-been",
            Map.of(
                "years",
                NumberText.years(at),
                "aboutOfHundred",
                NumberText.aboutOfHundred(bands.top(at))));
    return new Figure(
        NAME,
        title,
        List.of(
            source.cut(),
            Messages.of(
                "chart.IncidenceChart.shares-after-with-95-limits-lowest",
                Map.of("years", NumberText.years(at)))),
        key,
        List.of(panel(bands, end, years)),
        1,
        List.of(
            Messages.of(
                "chart.IncidenceChart.cumulative-incidence-to-the-first-failure",
                Map.of("failureDefinition", source.failureDefinition()))),
        Messages.of(
            "chart.IncidenceChart.stacked-bands-by-years-since-installation",
            Map.of("title", title, "joining", labels.stream().collect(Collectors.joining("; ")))));
  }

  private static Panel panel(IncidenceBands bands, double end, Scale years) {
    Scale shares = Scale.upTo(0, Math.min(1, bands.top(end)), 5, "0%");
    XYPlot plot =
        Plots.plot(
            Plots.axis(Messages.of("common.Years-since-installation"), years),
            Plots.bare(Plots.axis("", shares.padded(4, HEIGHT))));
    YIntervalSeriesCollection data = new YIntervalSeriesCollection();
    XYSeriesCollection marks = new XYSeriesCollection();
    DeviationStepRenderer areas = new DeviationStepRenderer(true, false);
    XYLineAndShapeRenderer shapes = new XYLineAndShapeRenderer(false, true);
    areas.setAlpha(1f);
    for (int i = 0; i < bands.names().size(); i++) {
      Look look = bands.look(i);
      data.addSeries(band(bands, i, end));
      marks.addSeries(marks(bands, i, end, years));
      areas.setSeriesPaint(i, look.color());
      areas.setSeriesFillPaint(i, Look.tint(look.color(), 0.4));
      areas.setSeriesStroke(i, Look.line(1));
      shapes.setSeriesShape(i, look.mark());
      shapes.setSeriesPaint(i, look.color());
    }
    Plots.layer(plot, data, areas);
    Plots.layer(plot, marks, shapes);
    Frame frame = new Frame(LEFT, RIGHT, Plots.NUMBERS_AND_TITLE, HEIGHT);
    return new Panel(
        "",
        Messages.of("chart.IncidenceChart.share-of-devices-stacked"),
        Plots.chart(plot, frame),
        frame,
        List.of());
  }

  /** A step at the very end is left out: it would have no width. */
  private static YIntervalSeries band(IncidenceBands bands, int number, double end) {
    YIntervalSeries series = new YIntervalSeries(bands.names().get(number), false, true);
    for (double year : bands.years()) {
      double before = year == end ? Math.nextDown(end) : year;
      double upper = bands.upper(number, before);
      double lower = number == 0 ? 0 : bands.upper(number - 1, before);
      series.add(year, upper, lower, upper);
    }
    return series;
  }

  private static XYSeries marks(IncidenceBands bands, int number, double end, Scale years) {
    XYSeries series = new XYSeries(bands.names().get(number));
    for (double year = years.tick(); year <= end + 1e-9; year += years.tick()) {
      series.add(year, bands.upper(number, year));
    }
    return series;
  }
}
