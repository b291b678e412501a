package pondtally.intake;

/** The sign before the decimals of a number. */
enum DecimalMark {
  POINT,
  COMMA
}
