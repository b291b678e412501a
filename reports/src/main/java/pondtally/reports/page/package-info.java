/**
 * The self-contained page: sentences, charts, tables, map, methods and cautions in one file that
 * asks nothing of any other host and needs no script. Each printed figure names its cell.
 */
package pondtally.reports.page;
