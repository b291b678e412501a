package pondtally.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a message says of a value that could not be used. That the row counts without it is true
 * until another finding sets the row aside.
 */
public final class LeftOutValue {

  /** How the message of such a finding ends. */
  public static final String ENDING = " Value left out; the row counts without it.";

  private static final String WITHOUT_ROW = " Value left out.";

  private record Row(SheetPlace sheet, int number) {}

  private final Set<Row> setAside = new HashSet<>();

  /** All findings, of reading and of the checks across rows. */
  LeftOutValue(List<Finding> findings) {
    for (Finding finding : findings) {
      if (finding.severity() == Severity.SET_ASIDE && finding.origin().row() > 0) {
        setAside.add(row(finding));
      }
    }
  }

  private static Row row(Finding finding) {
    return new Row(SheetPlace.of(finding.origin()), finding.origin().row());
  }

  /** The message as it is true now that every row's fate is known. */
  String message(Finding finding) {
    String message = finding.message();
    return message.endsWith(ENDING) && setAside.contains(row(finding))
        ? message.substring(0, message.length() - ENDING.length()) + WITHOUT_ROW
        : message;
  }
}
