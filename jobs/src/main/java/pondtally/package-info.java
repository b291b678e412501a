/** Pondtally's jobs: partner files to result tables. */
package pondtally;
