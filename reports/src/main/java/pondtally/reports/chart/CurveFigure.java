package pondtally.reports.chart;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jfree.chart.plot.XYPlot;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.chart.Panel.Beside;
import pondtally.reports.chart.Panel.Frame;
import pondtally.reports.text.NumberText;

/**
 * Panels of step curves: up to four groups in one plot; more in small plots, each group over the
 * others in gray, six plots to a figure.
 *
 * @param rangeTitle what the curves measure
 * @param range its axis
 * @param start what every curve says at age 0
 * @param domainTitle title of the horizontal axis
 * @param hasCounts whether numbers at risk, failed and censored stand below
 */
record CurveFigure(
    String rangeTitle, Scale range, double start, String domainTitle, boolean hasCounts) {

  static final int TOGETHER = 4;
  private static final int PANELS = 6;
  private static final int COLUMNS = 2;
  private static final double LEFT = 64;
  private static final double RIGHT = 12;
  private static final Font SMALL = Lettering.regular(Lettering.SMALL);

  /**
   * The figure of these curves, in parts where one would be too long; words come from the model.
   */
  List<Figure> figures(List<StepCurve> curves, Figure words) {
    if (curves.size() <= TOGETHER) {
      Panel panel = together(curves);
      return List.of(with(words, key(curves), List.of(panel), 1));
    }
    List<Figure> parts = new ArrayList<>();
    int count = (curves.size() + PANELS - 1) / PANELS;
    for (int i = 0; i < count; i++) {
      List<StepCurve> part = curves.subList(i * PANELS, Math.min(curves.size(), (i + 1) * PANELS));
      List<Panel> panels = part.stream().map(curve -> alone(curve, curves)).toList();
      parts.add(with(words, smallKey(), panels, COLUMNS).part(i + 1, count));
    }
    return parts;
  }

  private static Figure with(Figure f, List<KeyEntry> key, List<Panel> panels, int columns) {
    return new Figure(
        f.name(), f.title(), f.subtitles(), key, panels, columns, f.foot(), f.description());
  }

  private Panel together(List<StepCurve> curves) {
    Scale years = years(curves, FigureDrawing.WIDTH);
    List<Double> shown = shownYears(years);
    List<Look> looks = IntStream.range(0, curves.size()).mapToObj(Look::series).toList();
    XYPlot plot = plot(years);
    new CurvePlot(plot, start, shown).curves(curves, looks);
    List<Beside> below = new ArrayList<>();
    for (int i = 0; hasCounts && i < curves.size(); i++) {
      boolean one = curves.size() == 1;
      below.add(
          new CountsTable(
              one ? "" : curves.get(i).label(),
              one ? Optional.empty() : Optional.of(looks.get(i)),
              Counts.of(curves.get(i), shown),
              years.padded(0.015)));
    }
    return panel("", plot, 190, below);
  }

  private Panel alone(StepCurve curve, List<StepCurve> all) {
    Scale years = years(all, (FigureDrawing.WIDTH - 14) / COLUMNS);
    List<Double> shown = shownYears(years);
    XYPlot plot = plot(years);
    List<StepCurve> others = all.stream().filter(other -> other != curve).toList();
    new CurvePlot(plot, start, shown)
        .context(others.stream().filter(StepCurve::isDrawn).toList())
        .curves(List.of(curve), List.of(Look.series(0)));
    List<Beside> below =
        hasCounts
            ? List.of(
                new CountsTable("", Optional.empty(), Counts.of(curve, shown), years.padded(0.015)))
            : List.of();
    String heading =
        curve.isDrawn() ? curve.label() : curve.label() + ": fewer than 5 followed, no curve";
    return panel(heading, plot, 92, below);
  }

  private XYPlot plot(Scale years) {
    return Plots.plot(
        Plots.axis(domainTitle, years.padded(0.015)),
        Plots.bare(Plots.axis("", range.padded(0.015))));
  }

  private Panel panel(String heading, XYPlot plot, double height, List<Beside> below) {
    Frame frame = new Frame(LEFT, RIGHT, Plots.NUMBERS_AND_TITLE, height);
    return new Panel(heading, rangeTitle, Plots.chart(plot, frame), frame, below);
  }

  private Scale years(List<StepCurve> curves, double width) {
    double most = curves.stream().mapToDouble(c -> c.supportedYears().orElse(0)).max().orElse(1);
    long largest =
        curves.stream().mapToLong(curve -> Counts.of(curve, List.of(0.0)).most()).max().orElse(0);
    double label = Math.max(16, Lettering.width(NumberText.count(largest), SMALL) + 6);
    return Scale.years(most, label / (width - LEFT - RIGHT));
  }

  private static List<Double> shownYears(Scale years) {
    List<Double> shown = new ArrayList<>();
    for (int i = 0; i * years.tick() <= years.upper() + 1e-9; i++) {
      shown.add(i * years.tick());
    }
    return shown;
  }

  private static List<KeyEntry> key(List<StepCurve> curves) {
    if (curves.size() == 1) {
      return List.of(new KeyEntry(Look.series(0), Sample.BOX, "95% limits"));
    }
    List<KeyEntry> key = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      String label =
          curves.get(i).isDrawn()
              ? curves.get(i).label()
              : curves.get(i).label() + " (fewer than 5 followed, no curve)";
      key.add(new KeyEntry(Look.series(i), Sample.LINE_AND_MARK, label));
    }
    return key;
  }

  private static List<KeyEntry> smallKey() {
    Look others = new Look(Look.CONTEXT, Look.line(0.8f), Look.circle(0));
    return List.of(
        new KeyEntry(Look.series(0), Sample.LINE_AND_MARK, "the group named above the plot"),
        new KeyEntry(Look.series(0), Sample.BOX, "its 95% limits"),
        new KeyEntry(others, Sample.LINE, "the other groups"));
  }
}
