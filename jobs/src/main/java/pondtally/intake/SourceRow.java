package pondtally.intake;

import java.io.Serializable;
import java.util.List;

/**
 * A row as it stands in a partner's file.
 *
 * @param file index of the file in the sorted list of input files
 * @param sheet index of the sheet in its workbook; 0 for text files
 * @param row row number as a spreadsheet shows it
 * @param headings the partner's headings; empty where a column has none
 * @param fields our field for each column; empty where it is not read
 * @param cells the cells as they stand, as many as there are headings or more
 */
public record SourceRow(
    int file, int sheet, int row, List<String> headings, List<String> fields, List<String> cells)
    implements Serializable {}
