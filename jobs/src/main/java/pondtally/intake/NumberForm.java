package pondtally.intake;

import pondtally.schema.Unit;

/**
 * How the numbers of a column are meant.
 *
 * @param bareUnit unit of numbers that name none; null: the field has no unit
 * @param unitBy who states that unit, for messages
 * @param refused the unit that the heading names and that is none of the field's, so that bare
 *     numbers cannot be used; null: none
 * @param decimal the decimal mark that columns.yaml states; null: it is found out
 * @param isOurs whether the table is the program's own, whose numbers have a decimal point
 */
record NumberForm(
    Unit bareUnit, String unitBy, String refused, DecimalMark decimal, boolean isOurs) {}
