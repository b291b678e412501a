/** The list of rows that partners can correct: one sheet a partner, in the partner's own words. */
package pondtally.reports.fixlist;
