/** Numbers and texts as compact bytes, and back. Knows nothing of ours. */
package pondtally.pack;
