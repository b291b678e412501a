package pondtally.stage;

import java.util.List;
import pondtally.analysis.AnalysisSettings;
import pondtally.analysis.BuyingList;
import pondtally.analysis.ProgramTally;
import pondtally.analysis.SeasonForecast;
import pondtally.analysis.VisitInterval;
import pondtally.table.RecordRows;
import pondtally.table.ResultTable;

/** The tables of next season's plan. */
final class SeasonTables {

  private SeasonTables() {}

  static List<ResultTable> of(ClusterOutcome outcome, AnalysisSettings settings) {
    ProgramTally tally = outcome.tally();
    List<SeasonForecast.Row> forecast =
        SeasonForecast.rows(outcome.worklist(), tally.benefits(), settings);
    VisitInterval.Tables interval = VisitInterval.tables(tally.benefits(), settings);
    return List.of(
        RecordRows.table("season_forecast", forecast),
        RecordRows.table("visit_interval", interval.rows()),
        RecordRows.table("visit_interval_curve", interval.points()),
        RecordRows.table("buying_list", BuyingList.rows(forecast, tally.buying())),
        RecordRows.table("requests", tally.requests().rows()),
        RecordRows.table("lapses", outcome.lapses()));
  }
}
