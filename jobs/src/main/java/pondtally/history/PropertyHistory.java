package pondtally.history;

import java.io.Serializable;
import java.util.List;
import pondtally.record.Property;

/**
 * A property, counted once however many rows name it.
 *
 * @param property the first row, in file order, that names it
 * @param siteIds the sites whose devices protect it, sorted
 * @param protectedTime verified functional time of those sites within its protected span
 */
public record PropertyHistory(Property property, List<String> siteIds, Stretches protectedTime)
    implements Serializable {}
