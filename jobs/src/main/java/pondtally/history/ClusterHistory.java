package pondtally.history;

import java.io.Serializable;
import java.util.List;
import pondtally.record.ClusterRecords;

/**
 * The histories of one cluster of linked sites, and the checked rows that they were made from.
 *
 * @param sites by site id
 * @param ponds by pond id
 * @param properties by property id
 */
public record ClusterHistory(
    ClusterRecords records,
    List<SiteHistory> sites,
    List<PondHistory> ponds,
    List<PropertyHistory> properties)
    implements Serializable {}
