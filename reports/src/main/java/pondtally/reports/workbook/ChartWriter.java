package pondtally.reports.workbook;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import javax.xml.namespace.QName;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.xmlbeans.XmlCursor;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBarChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTErrBars;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumData;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumRef;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrBarType;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrValType;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBody;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;

/**
 * Draws native charts whose series stay references to cells. The values are stored beside the
 * references, so that a preview shows the chart without recalculating.
 */
final class ChartWriter {

  /** Blue, vermillion, green, purple, two grays: 3 to 1 on white, told apart by the color-blind. */
  private static final int[] PALETTE = {0x0072B2, 0xD55E00, 0x009E73, 0xCC79A7, 0x333333, 0x8C8C8C};

  private static final PresetLineDash[] DASHES = {
    PresetLineDash.SOLID, PresetLineDash.DASH, PresetLineDash.SYSTEM_DOT, PresetLineDash.DASH_DOT
  };

  /** Digits that stand side by side under a chart as wide as ours are. */
  private static final int MOST_NAMES = 80;

  /** Upward to the right, in 60,000ths of a degree. */
  private static final int SLANT = -45 * 60_000;

  private static final QName LANGUAGE = new QName("lang");
  private static final Set<String> RUN_PROPERTIES = Set.of("rPr", "defRPr", "endParaRPr");

  private final Function<String, Place> places;
  private int lastId = 1_000;

  /**
   * @param places the place of each table sheet, by its name
   */
  ChartWriter(Function<String, Place> places) {
    this.places = places;
  }

  void draw(XSSFSheet sheet, String sheetName, ChartPlan plan, XSSFClientAnchor anchor) {
    XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
    label(chart, plan);
    if (plan.kind() == ChartPlan.Kind.LINES) {
      lines(chart, sheetName, plan);
    } else {
      columns(chart, sheetName, plan);
    }
    if (plan.series().size() > 1) {
      chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    }
    inEnglish(chart);
  }

  private void label(XSSFChart chart, ChartPlan plan) {
    chart.setTitleText(plan.title());
    chart.setTitleOverlay(false);
    chart.displayBlanksAs(DisplayBlanks.GAP);
    chart.getFormattedTitle().getParagraph(0).addDefaultRunProperties().setFontSize(13.0);
    chart.getCTChartSpace().addNewRoundedCorners().setVal(false);
    CTNonVisualDrawingProps frame =
        chart.getGraphicFrame().getCTGraphicalObjectFrame().getNvGraphicFramePr().getCNvPr();
    lastId++;
    frame.setId(lastId);
    frame.setName(
        Messages.of("workbook.ChartWriter.chart", Map.of("part", String.valueOf(lastId - 1_000))));
    frame.setTitle(plan.title());
    frame.setDescr(plan.description());
  }

  private void columns(XSSFChart chart, String sheetName, ChartPlan plan) {
    XDDFChartAxis bottom = chart.createCategoryAxis(AxisPosition.BOTTOM);
    XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
    axes(bottom, left, plan);
    left.setCrossBetween(AxisCrossBetween.BETWEEN);
    bottom.setTickLabelPosition(AxisTickLabelPosition.LOW);
    reach(left, sheetName, plan);
    XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, bottom, left);
    data.setBarDirection(BarDirection.COL);
    boolean stacked = plan.kind() == ChartPlan.Kind.STACKED;
    data.setBarGrouping(stacked ? BarGrouping.STACKED : BarGrouping.CLUSTERED);
    data.setVaryColors(false);
    int color = 0;
    for (ChartPlan.Series series : plan.series()) {
      XDDFChartData.Series added =
          data.addSeries(names(place(sheetName, series), series), numbers(sheetName, series));
      added.setTitle(series.name(), null);
      added.setFillProperties(fill(PALETTE[color++ % PALETTE.length]));
    }
    chart.plot(data);
    if (isCrowded(sheetName, plan)) {
      slant(chart);
    }
    CTBarChart bar = chart.getCTChart().getPlotArea().getBarChartArray(0);
    attribute(bar.addNewGapWidth(), "80");
    if (stacked) {
      attribute(bar.addNewOverlap(), "100");
    }
    for (int i = 0; i < plan.series().size(); i++) {
      if (!plan.series().get(i).plus().isEmpty()) {
        limits(bar.getSerArray(i).addNewErrBars(), sheetName, plan.series().get(i));
      }
    }
  }

  /** Whether the names under the bars would run into each other. */
  private boolean isCrowded(String sheetName, ChartPlan plan) {
    ChartPlan.Series first = plan.series().get(0);
    return lines(place(sheetName, first), first).stream()
            .mapToDouble(line -> TextWidth.of(line.text(first.x())) + 2)
            .sum()
        > MOST_NAMES;
  }

  private static void slant(XSSFChart chart) {
    CTTextBody words = chart.getCTChart().getPlotArea().getCatAxArray(0).addNewTxPr();
    words.addNewBodyPr().setRot(SLANT);
    words.addNewLstStyle();
    words.addNewP().addNewPPr().addNewDefRPr();
  }

  /** The axis holds zero and the whole of every error bar; programs look at the bars alone. */
  private void reach(XDDFValueAxis axis, String sheetName, ChartPlan plan) {
    double lowest = 0;
    double highest = 0;
    for (ChartPlan.Series series : plan.series()) {
      Place place = place(sheetName, series);
      Double[] own = values(place, series, series.y());
      Double[] plus = series.plus().isEmpty() ? own : values(place, series, series.plus());
      for (int i = 0; i < own.length; i++) {
        double at = own[i] == null ? 0 : own[i];
        double arm = series.plus().isEmpty() || plus[i] == null ? 0 : plus[i];
        lowest = Math.min(lowest, at);
        highest = Math.max(highest, at + arm);
      }
    }
    if (lowest == 0) {
      axis.setMinimum(0);
    }
    if (plan.series().stream().anyMatch(series -> !series.plus().isEmpty()) && highest > 0) {
      axis.setMaximum(roundUp(highest));
    }
  }

  /** The next round number. */
  private static double roundUp(double value) {
    double power = Math.pow(10, Math.floor(Math.log10(value)));
    for (double step : new double[] {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8}) {
      if (value <= step * power) {
        return step * power;
      }
    }
    return 10 * power;
  }

  /** The library marks texts with the machine's own language. */
  private static void inEnglish(XSSFChart chart) {
    try (XmlCursor cursor = chart.getCTChartSpace().newCursor()) {
      while (cursor.hasNextToken()) {
        if (cursor.isStart() && RUN_PROPERTIES.contains(cursor.getName().getLocalPart())) {
          cursor.setAttributeText(LANGUAGE, "en-US");
        }
        cursor.toNextToken();
      }
    }
  }

  /** Sets {@code val} as text: the library's slim schema has no type for percentages. */
  private static void attribute(XmlObject element, String value) {
    try (XmlCursor cursor = element.newCursor()) {
      cursor.setAttributeText(new QName("val"), value);
    }
  }

  private void lines(XSSFChart chart, String sheetName, ChartPlan plan) {
    XDDFValueAxis bottom = chart.createValueAxis(AxisPosition.BOTTOM);
    XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
    axes(bottom, left, plan);
    bottom.setMinimum(0);
    bottom.setNumberFormat("0");
    if (plan.valueFormat().endsWith("%")) {
      left.setMinimum(0);
      left.setMaximum(1);
      left.setMajorUnit(0.2);
    }
    XDDFScatterChartData data =
        (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, bottom, left);
    data.setStyle(ScatterStyle.LINE);
    data.setVaryColors(false);
    int look = 0;
    for (ChartPlan.Series series : plan.series()) {
      Place place = place(sheetName, series);
      var added =
          (XDDFScatterChartData.Series)
              data.addSeries(
                  numbers(place, series, series.x()), numbers(place, series, series.y()));
      added.setTitle(series.name(), null);
      added.setSmooth(false);
      added.setMarkerStyle(MarkerStyle.NONE);
      // Without line properties of its own a series is invisible in some programs.
      added.setLineProperties(stroke(series, look));
      look += series.faint() ? 0 : 1;
    }
    chart.plot(data);
  }

  private static void axes(XDDFChartAxis bottom, XDDFValueAxis left, ChartPlan plan) {
    bottom.setTitle(plan.horizontal());
    left.setTitle(plan.vertical());
    left.setCrosses(AxisCrosses.AUTO_ZERO);
    left.setNumberFormat(plan.valueFormat());
    bottom.setVisible(true);
    left.setVisible(true);
    XDDFLineProperties grid = new XDDFLineProperties(fill(0xD9D9D9));
    grid.setWidth(0.75);
    left.getOrAddMajorGridProperties().setLineProperties(grid);
  }

  private static XDDFLineProperties stroke(ChartPlan.Series series, int look) {
    int at = series.faint() ? Math.max(0, look - 1) : look;
    XDDFLineProperties line = new XDDFLineProperties(fill(PALETTE[at % PALETTE.length]));
    line.setWidth(series.faint() ? 0.75 : 2.25);
    line.setPresetDash(
        new XDDFPresetLineDash(
            series.faint() ? PresetLineDash.SYSTEM_DASH : DASHES[at % DASHES.length]));
    return line;
  }

  private void limits(CTErrBars bars, String sheetName, ChartPlan.Series series) {
    Place place = place(sheetName, series);
    bars.addNewErrBarType().setVal(STErrBarType.BOTH);
    bars.addNewErrValType().setVal(STErrValType.CUST);
    bars.addNewNoEndCap().setVal(false);
    reference(bars.addNewPlus().addNewNumRef(), place, series, series.plus());
    reference(bars.addNewMinus().addNewNumRef(), place, series, series.minus());
    XDDFLineProperties line =
        new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(PresetColor.BLACK)));
    line.setWidth(1.25);
    bars.addNewSpPr().setLn(line.getXmlObject());
  }

  private static void reference(
      CTNumRef reference, Place place, ChartPlan.Series series, String column) {
    reference.setF(place.farRange(column, series.from(), series.count()));
    CTNumData cache = reference.addNewNumCache();
    cache.addNewPtCount().setVal(series.count());
    Double[] values = values(place, series, column);
    for (int i = 0; i < values.length; i++) {
      if (values[i] != null) {
        var point = cache.addNewPt();
        point.setIdx(i);
        point.setV(Double.toString(values[i]));
      }
    }
  }

  private Place place(String own, ChartPlan.Series series) {
    return places.apply(series.sheet().isEmpty() ? own : series.sheet());
  }

  private static XDDFCategoryDataSource names(Place place, ChartPlan.Series series) {
    String[] names =
        lines(place, series).stream().map(l -> l.text(series.x())).toArray(String[]::new);
    return XDDFDataSourcesFactory.fromArray(
        names, place.farRange(series.x(), series.from(), series.count()));
  }

  private XDDFNumericalDataSource<Double> numbers(String own, ChartPlan.Series series) {
    return numbers(place(own, series), series, series.y());
  }

  private static XDDFNumericalDataSource<Double> numbers(
      Place place, ChartPlan.Series series, String column) {
    return XDDFDataSourcesFactory.fromArray(
        values(place, series, column), place.farRange(column, series.from(), series.count()));
  }

  private static Double[] values(Place place, ChartPlan.Series series, String column) {
    TableColumn of = place.sheet().columns().get(place.columnIndex(column));
    return lines(place, series).stream().map(l -> value(of, l)).toArray(Double[]::new);
  }

  private static Double value(TableColumn column, Line line) {
    OptionalDouble own =
        column.derived() && column.formula() != null
            ? column.formula().value(line)
            : line.number(column.column());
    return own.isPresent() ? own.getAsDouble() : null;
  }

  private static List<Line> lines(Place place, ChartPlan.Series series) {
    return place.sheet().lines().subList(series.from(), series.from() + series.count());
  }

  private static XDDFSolidFillProperties fill(int rgb) {
    return new XDDFSolidFillProperties(
        XDDFColor.from(
            new byte[] {(byte) (rgb >> 16 & 0xFF), (byte) (rgb >> 8 & 0xFF), (byte) (rgb & 0xFF)}));
  }
}
