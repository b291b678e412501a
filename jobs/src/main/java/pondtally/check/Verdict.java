package pondtally.check;

import java.io.Serializable;
import pondtally.record.Origin;

/**
 * The fate that a check across rows gives to a row that had been read well.
 *
 * @param origin the row; its {@code changed} flag tells which count it leaves
 * @param table name of the input table
 * @param fate {@link RowFate#SET_ASIDE}, {@link RowFate#DUPLICATE} or, for a dropped value, {@link
 *     RowFate#CHANGED}
 */
public record Verdict(Origin origin, String table, RowFate fate) implements Serializable {}
