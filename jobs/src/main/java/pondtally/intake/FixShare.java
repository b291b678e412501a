package pondtally.intake;

import java.io.Serializable;
import java.util.List;

/**
 * What the lists of corrected rows mean for one file.
 *
 * @param rows corrections of its rows
 * @param list what it holds if it is such a list itself; null: it is not
 */
record FixShare(List<FixRow> rows, Listed list) implements Serializable {

  /** Nothing was corrected. */
  static final FixShare NONE = new FixShare(List.of(), null);

  /**
   * A list of corrected rows.
   *
   * @param changed rows that somebody changed and that replace others
   * @param untouched rows left as they were
   * @param refused what could not be used, in sentences
   */
  record Listed(int changed, int untouched, List<String> refused) implements Serializable {}
}
