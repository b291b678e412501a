package pondtally.schema;

/**
 * The field that a heading stands for.
 *
 * @param field the field
 * @param unit the unit that the heading names, of the field's dimension; null: none, so the field's
 *     own
 * @param comment text in brackets that is no unit; empty: none
 * @param isOwnName whether the heading is the field's own name rather than a synonym
 */
public record HeadingMatch(FieldSchema field, Unit unit, String comment, boolean isOwnName) {}
