package pondtally.analysis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pondtally.record.MaterialItem;

/**
 * The result table {@code buying_list}: pipe, couplers and fence panels for the repairs and
 * replacements expected in the first year ahead, by pipe type. Replacements are built like the
 * devices in service; repairs take what they took on average. Common practice, no source.
 */
public final class BuyingList {

  private static final Map<MaterialItem, String> UNITS = units();

  private BuyingList() {}

  private static Map<MaterialItem, String> units() {
    Map<MaterialItem, String> units = new EnumMap<>(MaterialItem.class);
    units.put(MaterialItem.PIPE, "lengths of 20 ft");
    units.put(MaterialItem.COUPLER, "couplers");
    units.put(MaterialItem.FENCE_PANEL, "panels of 16 ft");
    return units;
  }

  /**
   * One row of the result table; null: unknown.
   *
   * @param toHave whole units that are enough in 19 years of 20, if the failures are at their upper
   *     limit
   */
  public record Row(
      String pipe,
      String item,
      String unit,
      Double replacements,
      Double perReplacement,
      Double repairs,
      Double perRepair,
      Double expectedQuantity,
      Long buy,
      Long toHave) {}

  /**
   * The rows of the result table.
   *
   * @param forecast rows of {@code season_forecast}
   */
  public static List<Row> rows(List<SeasonForecast.Row> forecast, BuyingTally tally) {
    List<Row> rows = new ArrayList<>();
    for (SeasonForecast.Row season : forecast) {
      boolean counts = season.grouping().equals("pipe") && season.year() == 1;
      if (counts && season.expectedFailures() != null) {
        BuyingTally.Needs needs = tally.needs().get(season.group());
        UNITS.keySet().forEach(item -> add(rows, season, needs, item, perRepair(tally, item)));
      }
    }
    return rows;
  }

  /** Mean quantity for a repair, over all pipe types; null where no repair was ever itemized. */
  private static Double perRepair(BuyingTally tally, MaterialItem item) {
    double quantity = 0;
    long repairs = 0;
    boolean itemized = false;
    for (BuyingTally.Needs needs : tally.needs().values()) {
      itemized |= UNITS.keySet().stream().anyMatch(any -> needs.inRepairs(any) > 0);
      boolean takes = needs.perReplacement(item) == null || needs.perReplacement(item) > 0;
      quantity += takes ? needs.inRepairs(item) : 0;
      repairs += takes ? needs.repairs() : 0;
    }
    return repairs == 0 || !itemized ? null : (Double) (quantity / repairs);
  }

  private static void add(
      List<Row> rows,
      SeasonForecast.Row season,
      BuyingTally.Needs needs,
      MaterialItem item,
      Double perRepair) {
    Double perReplacement = needs == null ? null : needs.perReplacement(item);
    if (perReplacement == null || perReplacement == 0) {
      return;
    }
    double mended = perRepair == null ? 0 : perRepair;
    double expected = season.replacements() * perReplacement + season.repairs() * mended;
    // What stands failed is mended for certain; only the failures to come vary.
    double events = season.replacements() + season.repairs();
    double most = season.devicesFailed() + season.upper();
    double upper = events == 0 ? 0 : expected * Math.max(1, most / events);
    rows.add(
        new Row(
            season.group(),
            item.code(),
            UNITS.get(item),
            season.replacements(),
            perReplacement,
            season.repairs(),
            perRepair,
            expected,
            (long) Math.ceil(expected - 1e-9),
            (long) Math.ceil(upper - 1e-9)));
  }
}
