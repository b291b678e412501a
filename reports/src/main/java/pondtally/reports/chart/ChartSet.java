package pondtally.reports.chart;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import pondtally.reports.table.TablePackage;

/** All charts that a folder of tables allows. */
public final class ChartSet {

  private static final List<Function<ChartSource, List<Figure>>> SUBJECTS =
      List.of(
          SurvivalChart::figures,
          IncidenceChart::figures,
          CausesChart::figures,
          RateChart::byPipe,
          RateChart::byWatershed,
          FunnelChart::figures,
          RepeatFailuresChart::figures,
          HazardRatioChart::figures,
          CostChart::figures,
          SensitivityChart::figures,
          AcreYearsChart::figures,
          RemovalsChart::figures,
          SeasonChart::figures,
          VisitIntervalChart::figures);

  private ChartSet() {}

  /**
   * Draws every chart whose table the run made into {@code folder}, which is created where it is
   * missing; several at the same time. The same tables give the same bytes.
   *
   * @return the charts, in the order in which a report shows them
   */
  public static List<ChartFile> write(TablePackage tables, Path folder) throws IOException {
    Files.createDirectories(folder);
    try {
      return figures(tables).parallelStream().map(figure -> write(figure, folder)).toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static ChartFile write(Figure figure, Path folder) {
    try {
      SvgFile.write(figure, folder.resolve(figure.name() + ".svg"));
      PngFile.write(figure, folder.resolve(figure.name() + ".png"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new ChartFile(figure.name(), figure.title(), figure.description());
  }

  static List<Figure> figures(TablePackage tables) {
    ChartSource source = new ChartSource(tables);
    return SUBJECTS.stream().flatMap(subject -> subject.apply(source).stream()).toList();
  }
}
