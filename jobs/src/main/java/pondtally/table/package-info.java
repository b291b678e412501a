/** Result tables, their declared columns, and the open data package that they are written to. */
package pondtally.table;
