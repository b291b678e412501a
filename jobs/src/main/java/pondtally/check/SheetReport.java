package pondtally.check;

import java.io.Serializable;
import java.util.List;
import java.util.Map;

/**
 * What reading one sheet (or text file) found, before rows are checked against each other.
 *
 * @param file index of the file in the sorted list of input files
 * @param sheet index of the sheet in its workbook; 0 for text files
 * @param sheetName name of the sheet; empty for text files
 * @param table the input table it holds; null where it was not recognised (a finding says why)
 * @param headings the partner's own heading for each of our fields that the sheet has
 * @param counts fates of its rows so far
 * @param newestDay newest visit or install day that is not after the day of the run, days since
 *     1970-01-01; null: none
 * @param findings what was noticed, in row order
 */
public record SheetReport(
    int file,
    int sheet,
    String sheetName,
    String table,
    Map<String, String> headings,
    RowCounts counts,
    Integer newestDay,
    List<Finding> findings)
    implements Serializable {}
