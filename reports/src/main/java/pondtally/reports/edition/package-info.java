/**
 * The public edition: what of the result tables is left out, replaced, coarsened or withheld.
 * Reports of the public edition are made from these tables alone.
 */
package pondtally.reports.edition;
