package pondtally.check;

import java.io.Serializable;
import pondtally.record.Origin;

/**
 * One thing noticed about a row, before its place has been written out in words.
 *
 * @param origin the row; row number 0 where a finding is about a whole column, sheet or file
 * @param table name of the input table, for example {@code revisits}; null where the sheet was not
 *     recognised
 * @param field our name of the field, for example {@code visited_on}; null where the row as a whole
 *     is meant
 * @param column the partner's own heading where it cannot be found from {@code field} (a column we
 *     do not know); else null
 * @param value the value as it stood in the file; empty where there was none; null where the row as
 *     a whole is meant
 * @param severity what it did to the row
 * @param rule short name of the rule, for example {@code unreadable-date}
 * @param message one or two sentences: what is wrong, what was expected, what became of the row
 * @param suggestion what to write instead, where that can be worked out; else empty
 */
public record Finding(
    Origin origin,
    String table,
    String field,
    String column,
    String value,
    Severity severity,
    String rule,
    String message,
    String suggestion)
    implements Serializable {}
