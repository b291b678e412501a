/**
 * The wiring with Spark: rows of a device, then of a cluster of sites, are brought together; plain
 * functions do the work.
 */
package pondtally.stage;
