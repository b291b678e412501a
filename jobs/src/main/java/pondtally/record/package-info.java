/**
 * One flat record for each kind of row that a partner sends, in our units, with the place it came
 * from. Nothing here knows how a file looks or what is computed from it.
 */
package pondtally.record;
