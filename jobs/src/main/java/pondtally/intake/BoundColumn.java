package pondtally.intake;

import pondtally.schema.FieldSchema;

/**
 * A column of a sheet that is read as a field.
 *
 * @param column place in the sheet, from 0
 * @param field the field
 * @param heading the partner's own heading
 * @param converter what turns its cells into values
 */
record BoundColumn(int column, FieldSchema field, String heading, CellConverter converter) {}
