package pondtally.table;

/**
 * A declared column of a result table.
 *
 * @param name as in the first line of the CSV file
 * @param type of its cells
 * @param unit for example {@code usd}, {@code days}, {@code acres}; empty where there is none
 * @param description one sentence
 * @param isPrivate whether the public edition must leave it out or replace it
 */
public record Column(
    String name, ColumnType type, String unit, String description, boolean isPrivate) {}
