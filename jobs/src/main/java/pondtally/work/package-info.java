/** Pieces of work side by side. Knows nothing of ours. */
package pondtally.work;
