/**
 * Numbers, dates and names as readers see them, decided once for workbook, charts, page and
 * document. Knows nothing of tables, files or drawing; the same on every machine, whatever its
 * language.
 */
package pondtally.reports.text;
