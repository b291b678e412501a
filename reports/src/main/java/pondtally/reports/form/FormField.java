package pondtally.reports.form;

import java.util.List;

/**
 * A column that partners fill in.
 *
 * @param name our name of the field, for example {@code pipe_diameter_in}
 * @param heading for people, with the unit, for example {@code Pipe diameter (in)}
 * @param kind what its cells hold
 * @param need whether a row can do without it
 * @param unit for people, for example {@code inches}; empty: none
 * @param description one sentence
 * @param codes of which a cell holds one; empty for other kinds
 * @param minimum smallest value possible; for dates days since 1970-01-01; null: no limit
 * @param maximum greatest value possible, likewise
 */
public record FormField(
    String name,
    String heading,
    FormKind kind,
    FormNeed need,
    String unit,
    String description,
    List<String> codes,
    Double minimum,
    Double maximum) {

  /** The heading with the mark of a field that is needed. */
  String markedHeading() {
    return heading + need.mark();
  }
}
