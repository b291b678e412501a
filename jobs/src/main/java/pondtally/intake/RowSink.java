package pondtally.intake;

import pondtally.record.Origin;
import pondtally.schema.TableSchema;

/** Takes the values of the rows that are used. */
interface RowSink {

  /** Makes the sink of a sheet, once its table is known. */
  interface Maker {
    RowSink of(TableSchema table, RowJudge judge);
  }

  /**
   * Takes a row.
   *
   * @param values by position of the field; valid during the call only
   * @return whether the row was taken; false: it was reported and set aside
   */
  boolean accept(Origin origin, String partner, Object[] values);

  /** Newest install or visit day among the rows that were taken; null: none. */
  Integer newestDay();
}
