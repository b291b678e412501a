package pondtally.table;

/** Table Schema type of a column, with the Java type that a cell of it holds. */
public enum ColumnType {
  /** {@link String}. */
  STRING("string"),
  /** {@link Integer} or {@link Long}. */
  INTEGER("integer"),
  /** {@link Double}, finite. */
  NUMBER("number"),
  /** {@link Integer}: days since 1970-01-01. */
  DATE("date"),
  /** {@link Boolean}. */
  BOOLEAN("boolean");

  private final String schemaName;

  ColumnType(String schemaName) {
    this.schemaName = schemaName;
  }

  /** The name that Table Schema gives to the type. */
  public String schemaName() {
    return schemaName;
  }
}
