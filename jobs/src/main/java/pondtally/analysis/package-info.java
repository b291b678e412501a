/**
 * One class a subject: what the histories of all clusters say about survival, cost, wetland and the
 * rest, as result tables.
 */
package pondtally.analysis;
