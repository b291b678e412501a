/**
 * The workbook: one class a sheet says what stands on it, a few classes know how tables, charts,
 * formulas and text get into an Office Open XML file.
 */
package pondtally.reports.workbook;
