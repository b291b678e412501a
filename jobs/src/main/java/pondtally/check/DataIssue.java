package pondtally.check;

import java.io.Serializable;

/**
 * One line of what was noticed about the partners' rows, ready to be shown.
 *
 * @param partner who sent the file; empty for a file in the program folder itself
 * @param file path below the program folder
 * @param sheet name of the sheet; empty for text files
 * @param row as a spreadsheet shows it; null where a whole column, sheet or file is meant
 * @param table the input table; empty where the sheet was not recognised
 * @param column the partner's own heading, or our name of the field where the sheet has none; empty
 *     where the row as a whole is meant
 * @param value the value as it stood; empty where there was none
 * @param severity what it did to the row
 * @param rule short name of the rule
 * @param message what is wrong, what was expected, what became of the row, what to do
 * @param suggestion what to write instead; empty where that is not known
 */
public record DataIssue(
    String partner,
    String file,
    String sheet,
    Integer row,
    String table,
    String column,
    String value,
    Severity severity,
    String rule,
    String message,
    String suggestion)
    implements Serializable {}
