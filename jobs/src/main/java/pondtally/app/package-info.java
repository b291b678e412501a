/**
 * The job's entry point: settings, the Spark session, and the one page on which the whole way is
 * written.
 */
package pondtally.app;
