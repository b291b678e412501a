package pondtally.schema;

/** What a unit measures. Units convert into each other within a dimension only. */
public enum Dimension {
  LENGTH,
  AREA,
  TIME,
  MONEY,
  ANGLE
}
