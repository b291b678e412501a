package pondtally.schema;

import java.util.List;

/**
 * Definition of one field of an input table.
 *
 * @param position place among the fields of its table, from 0
 * @param name for example {@code pipe_diameter_in}
 * @param type of its values
 * @param kind what its text means; {@link TextKind#PLAIN} for everything but text
 * @param unit in which values are kept; null: none
 * @param required whether a row without it is set aside
 * @param codes the closed list of values, in the order in which they are shown; empty: any
 * @param minimum smallest value possible; for dates days since 1970-01-01; null: no limit
 * @param maximum greatest value possible, likewise
 * @param notBefore name of the date that this one cannot be before; null: none
 * @param defaultText value of an empty cell, as it would be written; null: not known
 * @param description one sentence for the people who fill the table in
 * @param synonyms other headings under which partners keep it
 * @param isPrivate whether it must not appear in a public edition
 */
public record FieldSchema(
    int position,
    String name,
    FieldType type,
    TextKind kind,
    Unit unit,
    boolean required,
    List<String> codes,
    Double minimum,
    Double maximum,
    String notBefore,
    String defaultText,
    String description,
    List<String> synonyms,
    boolean isPrivate) {}
