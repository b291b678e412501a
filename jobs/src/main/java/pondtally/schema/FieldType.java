package pondtally.schema;

/** Type of a field, by its name in Table Schema (lower case). */
public enum FieldType {
  /** Text, or one of a closed list of codes. */
  STRING,
  /** A decimal number. */
  NUMBER,
  /** A whole number. */
  INTEGER,
  /** A calendar year. */
  YEAR,
  /** A day. */
  DATE,
  /** Yes or no. */
  BOOLEAN
}
