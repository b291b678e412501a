package pondtally.record;

import java.io.Serializable;
import java.util.List;

/**
 * All rows about one cluster: the sites that are linked by a shared pond or a shared property,
 * which have to be judged together. Lists are in file order; a list may be empty, never null.
 *
 * @param cluster the smallest site id of the cluster
 */
public record ClusterRecords(
    String cluster,
    List<Site> sites,
    List<Install> installs,
    List<MaterialLine> materials,
    List<Visit> visits,
    List<Removal> removals,
    List<Property> properties,
    List<Area> areas,
    List<Request> requests)
    implements Serializable {}
