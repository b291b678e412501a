package pondtally.intake;

import java.util.List;

/** The texts by which reading knows the sheets that this program wrote itself. */
public final class FixMarks {

  /** Second line of a sheet that only explains; such a sheet holds no records. */
  public static final String NOT_READ =
      "This sheet explains the others. It is not read, so nothing that is written here counts.";

  /** Stands in the first row of a sheet of rows to correct, above the keys of the rows. */
  public static final String FIX_LIST = "pondtally: keys of rows, leave this column as it is";

  private FixMarks() {}

  /**
   * Whether a sheet is one of ours that only explains.
   *
   * @param top its first rows
   */
  static boolean onlyExplains(List<RawRow> top) {
    return top.stream().limit(2).anyMatch(row -> Blank.clean(row.cell(0)).equals(NOT_READ));
  }
}
