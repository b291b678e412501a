/**
 * What differs between two runs, and from what: their tables, records, settings and files compared
 * row by row. Knows neither the jobs nor any form of report.
 */
package pondtally.reports.compare;
