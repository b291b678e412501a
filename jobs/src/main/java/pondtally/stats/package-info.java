/**
 * Formulas of statistics and of present value, each with its source. Knows nothing about devices,
 * files or Spark.
 */
package pondtally.stats;
