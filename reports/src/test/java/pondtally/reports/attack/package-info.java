/** What a reader of the public edition can work out about the figures that it withholds. */
package pondtally.reports.attack;
