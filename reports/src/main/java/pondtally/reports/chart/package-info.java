/**
 * Charts from result tables, one class a subject, each as SVG and as PNG at 300 dots per inch. A
 * chart reads tables and computes no statistics: it cuts, orders and says what is seen.
 */
package pondtally.reports.chart;
