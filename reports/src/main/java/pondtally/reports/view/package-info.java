/**
 * From rows to what a sheet, a chart or a paragraph needs: selection, joining, column headings,
 * plain sentences that carry the cells they were read from, and the cautions.
 */
package pondtally.reports.view;
