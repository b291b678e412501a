package pondtally.reports.table;

/**
 * A folder of tables that is incomplete, changed by hand or not ours; the message says what to do.
 */
public final class BrokenTables extends RuntimeException {

  BrokenTables(String message) {
    super(message);
  }
}
