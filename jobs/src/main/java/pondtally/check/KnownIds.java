package pondtally.check;

import java.util.List;

/**
 * Ids that are known to the whole program, to find the nearest one to an unknown id. In any order.
 *
 * @param sites ids in sites
 * @param ponds ids of ponds that a site drains
 * @param devices ids in installs
 */
public record KnownIds(List<String> sites, List<String> ponds, List<String> devices) {

  /** Nothing is known: no id is suggested. */
  public static final KnownIds NONE = new KnownIds(List.of(), List.of(), List.of());
}
