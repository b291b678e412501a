/**
 * Partner files as they come, turned into records in our units: which file is which table, cells as
 * text with their place, strict conversion. The only package that knows how CSV files and workbooks
 * look.
 */
package pondtally.intake;
