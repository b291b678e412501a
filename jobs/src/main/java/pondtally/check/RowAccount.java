package pondtally.check;

import java.io.Serializable;

/**
 * Where the rows of one sheet ended.
 *
 * @param partner who sent the file; empty for a file in the program folder itself
 * @param file path below the program folder
 * @param sheet name of the sheet; empty for text files
 * @param table the input table; empty where the sheet was not recognised
 * @param counts fates of its rows, after they were checked against each other
 */
public record RowAccount(String partner, String file, String sheet, String table, RowCounts counts)
    implements Serializable {}
