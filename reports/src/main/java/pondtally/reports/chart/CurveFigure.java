package pondtally.reports.chart;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jfree.chart.plot.XYPlot;
import pondtally.reports.chart.Figure.KeyEntry;
import pondtally.reports.chart.Figure.Sample;
import pondtally.reports.chart.Panel.Beside;
import pondtally.reports.chart.Panel.Frame;
import pondtally.reports.text.Messages;
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
  private static final double HEIGHT = 190;
  private static final double SMALL_HEIGHT = 66;
  private static final double PAD = 4;
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
      parts.add(with(small(words), smallKey(), panels, COLUMNS).part(i + 1, count));
    }
    return parts;
  }

  /** Small plots have no room for axis titles: they are said once. */
  private Figure small(Figure f) {
    List<String> lines = new ArrayList<>(f.subtitles());
    lines.add(
        Messages.of(
            "chart.CurveFigure.upward-across",
            Map.of("lower", lower(rangeTitle), "lower2", lower(domainTitle))));
    return new Figure(
        f.name(), f.title(), lines, f.key(), f.panels(), f.columns(), f.foot(), f.description());
  }

  private static String lower(String title) {
    return Character.toLowerCase(title.charAt(0)) + title.substring(1);
  }

  private static Figure with(Figure f, List<KeyEntry> key, List<Panel> panels, int columns) {
    return new Figure(
        f.name(), f.title(), f.subtitles(), key, panels, columns, f.foot(), f.description());
  }

  private Panel together(List<StepCurve> curves) {
    Scale years = years(curves, FigureDrawing.WIDTH, 36);
    List<Double> shown = shownYears(years);
    List<Look> looks = IntStream.range(0, curves.size()).mapToObj(Look::series).toList();
    XYPlot plot = plot(domainTitle, years, HEIGHT);
    new CurvePlot(plot, start, shown).curves(curves, looks);
    List<Beside> below = new ArrayList<>();
    for (int i = 0; hasCounts && i < curves.size(); i++) {
      boolean one = curves.size() == 1;
      below.add(
          new CountsTable(
              one ? "" : curves.get(i).label(),
              one ? Optional.empty() : Optional.of(looks.get(i)),
              Counts.of(curves.get(i), shown),
              years));
    }
    return panel("", rangeTitle, plot, HEIGHT, below);
  }

  private Panel alone(StepCurve curve, List<StepCurve> all) {
    Scale years = years(all, FigureDrawing.panelWidth(COLUMNS), 18);
    List<Double> shown = shownYears(years);
    XYPlot plot = plot("", years, SMALL_HEIGHT);
    List<StepCurve> others =
        all.stream().filter(other -> !other.group().equals(curve.group())).toList();
    new CurvePlot(plot, start, shown)
        .context(others.stream().filter(StepCurve::isDrawn).toList())
        .curves(List.of(curve), List.of(Look.series(0)));
    List<Beside> below =
        hasCounts
            ? List.of(new CountsTable("", Optional.empty(), Counts.of(curve, shown), years))
            : List.of();
    String heading =
        curve.isDrawn()
            ? curve.label()
            : Messages.of(
                "chart.CurveFigure.fewer-than-5-followed-no-curve", Map.of("curve", curve.label()));
    return panel(heading, "", plot, SMALL_HEIGHT, below);
  }

  private XYPlot plot(String title, Scale years, double height) {
    return Plots.plot(
        Plots.axis(title, years), Plots.bare(Plots.axis("", range.padded(PAD, height))));
  }

  private static Panel panel(
      String heading, String rangeTitle, XYPlot plot, double height, List<Beside> below) {
    boolean isTitled = plot.getDomainAxis().getLabel() != null;
    double bottom = isTitled ? Plots.NUMBERS_AND_TITLE : Plots.NUMBERS;
    Frame frame = new Frame(LEFT, RIGHT, bottom, height);
    return new Panel(heading, rangeTitle, Plots.chart(plot, frame), frame, below);
  }

  /** The horizontal axis up to the longest curve, numbered so that the largest count fits. */
  private static Scale years(List<StepCurve> curves, double width, double apart) {
    double most = curves.stream().mapToDouble(c -> c.supportedYears().orElse(0)).max().orElse(1);
    long largest =
        curves.stream().mapToLong(curve -> Counts.of(curve, List.of(0.0)).most()).max().orElse(0);
    double label = Math.max(apart, Lettering.width(NumberText.count(largest), SMALL) + 6);
    double points = width - LEFT - RIGHT;
    return Scale.years(most, label / points).padded(PAD, points);
  }

  private static List<Double> shownYears(Scale years) {
    List<Double> shown = new ArrayList<>();
    for (int i = 0; i * years.tick() <= years.upper() - 1e-9; i++) {
      shown.add(i * years.tick());
    }
    return shown;
  }

  private static List<KeyEntry> key(List<StepCurve> curves) {
    if (curves.size() == 1) {
      return List.of(new KeyEntry(Look.series(0), Sample.BAND, "95% limits"));
    }
    List<KeyEntry> key = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      String label =
          curves.get(i).isDrawn()
              ? curves.get(i).label()
              : Messages.of(
                  "chart.CurveFigure.fewer-than-5-followed-no-curve-2",
                  Map.of("i", curves.get(i).label()));
      key.add(new KeyEntry(Look.series(i), Sample.LINE_AND_MARK, label));
    }
    return key;
  }

  private static List<KeyEntry> smallKey() {
    Look others = new Look(Look.CONTEXT, Look.line(0.8f), Look.circle(0));
    return List.of(
        new KeyEntry(
            Look.series(0),
            Sample.LINE_AND_MARK,
            Messages.of("chart.CurveFigure.the-group-named-above-the-plot")),
        new KeyEntry(Look.series(0), Sample.BAND, Messages.of("chart.CurveFigure.its-95-limits")),
        new KeyEntry(others, Sample.LINE, Messages.of("chart.CurveFigure.the-other-groups")));
  }
}
