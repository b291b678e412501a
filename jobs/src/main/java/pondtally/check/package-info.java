/**
 * What is wrong with a row and what became of it. Each row that was read ends in exactly one fate;
 * checks that need more than one row work on all the rows of a cluster at once.
 */
package pondtally.check;
