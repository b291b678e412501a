/**
 * The definitions of the input tables: open Table Schema descriptors, one for each table, and the
 * code that reads them.
 */
package pondtally.schema;
