/** Pondtally's reports: result tables to workbook, charts, page and document. */
package pondtally.reports;
