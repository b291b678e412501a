/**
 * Opens a folder of result tables and checks it against its own descriptor. The only way from
 * tables into reports.
 */
package pondtally.reports.table;
