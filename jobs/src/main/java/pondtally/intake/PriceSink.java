package pondtally.intake;

import java.util.NavigableMap;
import java.util.TreeMap;
import pondtally.record.Origin;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;

/** Collects the price index, one level a year. */
final class PriceSink implements RowSink {

  private static final FieldSchema YEAR = TableSchema.named("prices").field("year");
  private static final FieldSchema INDEX = TableSchema.named("prices").field("index");

  private final RowJudge judge;
  private final NavigableMap<Integer, Double> levels = new TreeMap<>();

  PriceSink(RowJudge judge) {
    this.judge = judge;
  }

  @Override
  public boolean accept(Origin origin, String partner, Object[] values) {
    Integer year = (Integer) values[YEAR.position()];
    Double level = levels.putIfAbsent(year, (Double) values[INDEX.position()]);
    if (level == null) {
      return true;
    }
    judge.setRowAside(
        IntakeRule.REPEATED_YEAR,
        year.toString(),
        "The year %s has the index %s already, in a row above."
            .formatted(year, PlainText.of(level)));
    return false;
  }

  /** Level of prices by year. */
  NavigableMap<Integer, Double> levels() {
    return levels;
  }

  @Override
  public Integer newestDay() {
    return null;
  }
}
