package pondtally.reports.table;

/**
 * A column as {@code datapackage.json} describes it.
 *
 * @param type Table Schema type: string, integer, number, date or boolean
 * @param unit empty where there is none
 * @param isPrivate whether the public edition must leave it out or replace it
 */
public record Field(String name, String type, String unit, String description, boolean isPrivate) {}
